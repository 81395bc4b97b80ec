import type { CodeSuggestion, Compared, NotCoded } from '../../codes/suggestion.ts';
import { columnsOf } from './column.ts';
import { partTable, type PartRow } from './part-table.ts';

const code = columnsOf<PartRow<CodeSuggestion>>();
const without = columnsOf<PartRow<NotCoded>>();
const compared = columnsOf<PartRow<Compared>>();

export const suggestedCodes = partTable(
  'operation',
  'codes',
  'Suggested codes; a coder confirms them',
  ({ codes }) => codes?.suggestions ?? [],
  [
    code.text('system', 'Code system', ({ part }) => part.system),
    code.text('code', 'Code', ({ part }) => part.code),
    code.text('title', 'Title', ({ part }) => part.title),
    code.text('kind', 'Diagnosis or procedure', ({ part }) => part.kind),
    code.integer('sequence', 'Place in the sequence of its kind', '1', ({ part }) => String(part.order)),
    code.text('because', 'Fields that led to it', ({ part }) =>
      part.because.map(({ field, value }) => `${field}: ${value}`).join('; '),
    ),
    code.text('rule', 'Rule', ({ part }) => part.rule.says),
    code.text('rule_source', 'Source of the rule', ({ part }) => part.rule.source),
    code.text('edition', 'Edition', ({ part }) => part.edition),
    code.text('code_known', 'How well the code is known', ({ part }) => part.status),
    code.text('would_change', 'What would lead to another code', ({ part }) => part.wouldChange),
  ],
);

export const notCodedFacts = partTable(
  'operation',
  'not-coded',
  'What is recorded and has no suggested code, and why',
  ({ codes }) => codes?.notCoded ?? [],
  [
    without.text('what', 'What is not coded', ({ part }) => part.what),
    without.text('why', 'Why', ({ part }) => part.why),
    without.text('fields', 'Fields that it stands in', ({ part }) => part.fields.join('; ') || undefined),
  ],
);

export const comparedCodes = partTable(
  'operation',
  'codes-compared',
  "The coder's own codes beside the suggested ones; the coder's choice stands",
  ({ codes }) => codes?.compared ?? [],
  [
    compared.text('system', 'Code system', ({ part }) => part.system),
    compared.text('code', 'Code', ({ part }) => part.code),
    compared.text('verdict', 'What it is beside the suggestions', ({ part }) => part.verdict),
    compared.text('message', 'The same in a sentence', ({ part }) => part.message),
  ],
);
