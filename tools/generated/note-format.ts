import { fieldsBelow, type Plan, type ValuePlan } from '../../schemas/src/fields/plan.ts';
import type { Notation } from '../../schemas/src/notation/notation.ts';
import { recordPlan, type RecordKind } from '../../schemas/src/records/records.ts';

const records: readonly RecordKind[] = ['operation', 'follow-up', 'amendment', 'department'];

/** Vocabularies up to this many words stand in the table itself. */
const SHORT = 8;

/** docs/note-format.md: every field of every record, as the schemas describe it. */
export function noteFormatPage(): string {
  const vocabularies = new Vocabularies();
  const parts = records.map((record) => recordPart(record, vocabularies));
  return `${[opening, ...parts, vocabularies.part()].join('\n\n')}\n`;
}

const opening = `<!-- Generated from schemas/ by npm run generate. Do not edit. -->

# The note format, version 1

A note is a text file whose name ends in \`.opnote.yaml\`. It holds one record about one eye: an operation, a follow-up
or an amendment; \`record:\` says which. What a department has in common stands in \`sideport.yaml\` at the root of the
folder that holds its notes.

\`\`\`yaml
opnote: 1
record: operation
status: draft
id: OP-2031-0417
eye: left
preop:
  biometry:
    axial-length: 29.60 mm
    k1: 43.25 D @ 5
complications: none
\`\`\`

- Sections are indented by two blanks. Entries of a list begin with \`- \`; a list of single words may be written in
  brackets, \`[nuclear, cortical]\`.
- A quantity is written with its unit. A bare number takes the field's own unit; another unit of the same kind is
  converted. Decimals stay as they were typed.
- A word of a vocabulary is understood in any case, and so are the synonyms listed with it.
- Why a field has no value is said in words: \`not recorded\` everywhere, and \`none\`, \`not done\` or \`not applicable\`
  where the last column says so. They are three different things; nothing is assumed where nothing is written.
- Identifiers are kept exactly as typed. One that other programs would read as a number is put in quotes: \`"0040719052"\`.
- \`# allow CHECK: reason\` behind a line or above a section sets a remark aside; \`# confirm\` marks a value that somebody
  still has to confirm, and \`# proposed\` one that dictation proposes. A final note keeps neither of these two.
- Refused, because it cannot be audited: anchors and aliases, merge keys, tags, a field twice in one place, several
  documents in one file.`;

function recordPart(record: RecordKind, vocabularies: Vocabularies): string {
  const plan = recordPlan(record);
  const title = `## ${plan.guide.label}\n\n${plan.guide.meaning}`;
  const top = table([...plan.fields].map(([key, field]) => row(key, field, vocabularies, record)));
  const sections = [...plan.fields].flatMap(([key, field]) => {
    const rows = [...fieldsBelow(field)].map((below) => row(dotted(field, below.path), below.plan, vocabularies));
    if (rows.length === 0) return [];
    const many = field.kind === 'list' ? ' Each entry of the list has these fields.' : '';
    return [`### ${heading(record, key)}\n\n${field.guide.meaning}${many}\n\n${table(rows)}`];
  });
  return [title, top, ...sections].join('\n\n');
}

function heading(record: RecordKind, key: string): string {
  return `${key} (${record})`;
}

/** A path below a section, with [] behind what is a list. */
function dotted(section: Plan, path: readonly string[]): string {
  let plan: Plan | undefined = section;
  return path
    .map((key) => {
      const group: Plan | undefined = plan?.kind === 'list' ? plan.item : plan;
      plan = group?.kind === 'group' ? group.fields.get(key) : undefined;
      return plan?.kind === 'list' && plan.item.kind === 'group' ? `${key}[]` : key;
    })
    .join('.');
}

const columns = ['field', 'what it says', 'written as', 'limits', 'no value', 'asked for by'];

function table(rows: readonly (readonly string[])[]): string {
  return [columns, columns.map(() => '---'), ...rows].map(tableLine).join('\n');
}

function tableLine(cells: readonly string[]): string {
  return `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
}

function row(name: string, plan: Plan, vocabularies: Vocabularies, record?: RecordKind): readonly string[] {
  const { meaning, says, source } = plan.guide;
  const section = record !== undefined && plan.kind !== 'value' && hasFields(plan);
  const shown = section ? `[\`${name}\`](#${anchor(heading(record, name))})` : `\`${name}\``;
  return [shown, meaning, form(plan, vocabularies), limits(plan), (says ?? []).join(', '), source ?? ''];
}

function hasFields(plan: Plan): boolean {
  return plan.kind === 'group' || (plan.kind === 'list' && plan.item.kind === 'group');
}

function form(plan: Plan, vocabularies: Vocabularies): string {
  if (plan.kind === 'group') return 'section';
  if (plan.kind === 'list')
    return plan.item.kind === 'group' ? 'list of sections' : `list: ${form(plan.item, vocabularies)}`;
  const { notation, guide } = plan;
  if (notation.words !== undefined) return vocabularies.name(notation);
  const example = guide.example ?? notation.examples[0];
  return example === undefined ? notation.name : `${notation.name}, such as \`${example}\``;
}

function limits(plan: Plan): string {
  if (plan.kind !== 'value') return '';
  const { usual, possible } = plan.guide;
  const unit = unitOf(plan);
  const parts = [];
  if (usual !== undefined) parts.push(`usual ${usual[0]} to ${usual[1]}${unit}`);
  if (possible !== undefined) parts.push(`possible ${possible[0]} to ${possible[1]}${unit}`);
  return parts.join('; ');
}

function unitOf({ notation }: ValuePlan): string {
  if (notation.name === 'keratometry') return ' D';
  return notation.unit === undefined || notation.unit === '' ? '' : ` ${notation.unit}`;
}

/** Collects the vocabularies that are too long for a table cell, each once. */
class Vocabularies {
  readonly #long = new Map<Notation<unknown>, string>();

  name(notation: Notation<unknown>): string {
    const words = notation.words ?? [];
    if (words.length <= SHORT && words.every(({ meaning }) => meaning === undefined)) {
      return words.map(({ word }) => `\`${word}\``).join(', ');
    }
    const title = `Words: ${notation.name}`;
    this.#long.set(notation, title);
    return `one of ${words.length} words: [${notation.name}](#${anchor(title)})`;
  }

  part(): string {
    const tables = [...this.#long].map(([{ words = [] }, title]) => {
      const rows = words.map(
        ({ word, synonyms, meaning = '' }) => `| \`${word}\` | ${synonyms.join(', ')} | ${meaning} |`,
      );
      return [`### ${title}`, '', '| word | also understood | meaning |', '| --- | --- | --- |', ...rows].join('\n');
    });
    return ['## Vocabularies', ...tables].join('\n\n');
  }
}

/** The address of a heading, as the usual renderers of Markdown make it. */
function anchor(heading: string): string {
  return heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N} _-]/gu, '')
    .replaceAll(' ', '-');
}
