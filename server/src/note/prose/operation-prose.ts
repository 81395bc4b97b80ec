import { recordPlan, type Amendment, type Operation } from '@sideport/schemas';
import type { ComputedNote, ComputedValue } from '../computing/computed.ts';
import { amendmentSection, changesBelow } from './amendment-lines.ts';
import { closingSections } from './closing-sections.ts';
import { CAUTIONS, referenceOf, signatureLines, statusNotices } from './common.ts';
import type { Fact, ProseDocument, ProseSection } from './document.ts';
import { join, longDate } from './english.ts';
import { MORE_VALUES, recordedLines } from './recorded-values.ts';
import { tidyFor, type Passage, type Tidy } from './passage.ts';
import { afterPassage } from './sections/after.ts';
import { beforePassage } from './sections/before.ts';
import { diagnosisPassage } from './sections/diagnosis.ts';
import { implantPassage } from './sections/implant.ts';
import { openingPassage } from './sections/opening.ts';
import { outcomePassage } from './sections/outcome.ts';
import { headFacts } from './sections/people.ts';
import { planPassage } from './sections/plan.ts';
import { removalHeading, removalPassage } from './sections/removal.ts';
import { safetyPassage } from './sections/safety.ts';

interface SectionMaker {
  readonly id: string;
  readonly heading: string | ((note: Operation) => string);
  /** The fields of the note that this section tells. */
  readonly keys: readonly string[];
  readonly passage: (note: Operation, tidy: Tidy) => Passage;
}

/** The sections in the order of an operation. */
const SECTIONS: readonly SectionMaker[] = [
  {
    id: 'diagnosis',
    heading: 'Diagnosis',
    keys: ['diagnosis', 'comorbidity', 'difficulty', 'indication'],
    passage: diagnosisPassage,
  },
  { id: 'before', heading: 'Before the operation', keys: ['preop'], passage: beforePassage },
  { id: 'plan', heading: 'Plan', keys: ['plan'], passage: planPassage },
  { id: 'safety', heading: 'Safety checks', keys: ['safety'], passage: safetyPassage },
  {
    id: 'opening',
    heading: 'Anaesthesia and opening',
    keys: [
      'anaesthesia',
      'antisepsis',
      'seat',
      'incisions',
      'ovd',
      'dye',
      'pupil-aid',
      'capsulotomy',
      'hydrodissection',
    ],
    passage: openingPassage,
  },
  {
    id: 'removal',
    heading: removalHeading,
    keys: ['nucleus', 'cortex', 'capsule-state', 'vitrectomy'],
    passage: removalPassage,
  },
  {
    id: 'implant',
    heading: 'Lens and closure',
    keys: ['explanted-lens', 'ring', 'lens', 'extra-procedures', 'drugs', 'antibiotic-withheld', 'closure'],
    passage: implantPassage,
  },
  {
    id: 'outcome',
    heading: 'Complications and findings',
    keys: [
      'complications',
      'complications-excluded',
      'findings',
      'specimens',
      'blood-loss',
      'thromboprophylaxis',
      'condition-at-end',
    ],
    passage: outcomePassage,
  },
  { id: 'after', heading: 'After-care', keys: ['after-care', 'reviews'], passage: afterPassage },
];

const HEAD_KEYS = [
  'patient',
  'date',
  'start',
  'finish',
  'place',
  'urgency',
  'procedure',
  'eye',
  'which-eye',
  'team',
  'status',
  'id',
  'record',
  'opnote',
];

export interface ProseInput {
  readonly computed: ComputedNote;
  /** Amendments of the note, oldest first. */
  readonly amendments: readonly Amendment[];
  /** How many places of the note could not be read. */
  readonly unread: number;
}

/** The note of an operation as prose a colleague would sign, in the order of the operation. */
export function operationProse(note: Operation, { computed, amendments, unread }: ProseInput): ProseDocument {
  const tidy = tidyFor('operation');
  const planned = note.status?.value === 'planned';
  const makers = SECTIONS.filter(({ keys }) => !planned || keys.some((key) => isThere(note, key)));
  const sections = makers.map((maker) => sectionOf(maker, note, tidy, computed.values, amendments));
  const elsewhere = changesBelow(amendments, (key) => !makers.some(({ keys }) => keys.includes(key)), note);
  return {
    title: titleOf(note),
    reference: referenceOf(note),
    notices: [...statusNotices(note, unread), ...(amendments.length > 0 ? [AMENDED] : [])],
    facts: [...headFacts(note, tidy), ...computedFacts(computed.values)],
    sections: [
      ...sections,
      ...closingSections(note, tidy),
      ...(amendments.length > 0 ? [amendmentSection(amendments, elsewhere)] : []),
    ],
    signatures: signatureLines(note.signed, tidy),
    cautions: [...CAUTIONS, ...(sections.some(({ computed: lines }) => lines.length > 0) ? [MORE_VALUES] : [])],
  };
}

const AMENDED =
  'This note has been amended. The text is the original; every amendment stands behind the section it belongs to, and all of them at the end.';

function titleOf(note: Operation): string {
  const kind = note.status?.value === 'planned' ? 'Plan of an operation' : 'Operation note';
  const eye = note.eye ? `${note.eye.value} eye` : 'eye not recorded';
  return join([`${kind}: ${eye}`, note.date && longDate(note.date.value)], ', ');
}

function isThere(note: Operation, key: string): boolean {
  return (
    recordPlan('operation').fields.has(key) &&
    Object.entries(note).some(([name, value]) => name === key && value !== undefined)
  );
}

function sectionOf(
  maker: SectionMaker,
  note: Operation,
  tidy: Tidy,
  values: readonly ComputedValue[],
  amendments: readonly Amendment[],
): ProseSection {
  return {
    id: maker.id,
    heading: typeof maker.heading === 'string' ? maker.heading : maker.heading(note),
    paragraphs: maker.passage(note, tidy).paragraphs,
    computed: recordedLines(
      values.filter(({ path }) => maker.keys.includes(String(path[0]))),
      note.reviews?.items.map((review) => tidy(review.what)),
    ),
    amended: changesBelow(amendments, (key) => maker.keys.includes(key), note),
  };
}

/** Age and duration belong to the head of the note. */
function computedFacts(values: readonly ComputedValue[]): readonly Fact[] {
  const ofHead = values.filter(({ path }) => HEAD_KEYS.includes(String(path[0])));
  return recordedLines(ofHead).map(({ name, text, cautions }) => ({
    label: `${name} (computed)`,
    text: join([text, ...cautions], '. '),
  }));
}
