import type { GroupPlan, ListPlan, Path, Plan, Span, ValuePlan } from '@sideport/schemas';
import { checkById } from '../checks/known-checks.ts';
import type { ComputedNote, ComputedValue } from '../computing/computed.ts';
import { inputsInWords } from '../computing/inputs-in-words.ts';
import type { NoteReading } from '../reading/note-reading.ts';
import { spotAt, type Aim } from './spots.ts';

/** What is known of a field and its value, in short plain sentences. */
export interface Explanation {
  /** What it is about: the key or the value. */
  readonly span: Span;
  readonly title: string;
  readonly meaning: string;
  /** Unit, limits, words understood: one short sentence each. */
  readonly expects: readonly string[];
  readonly computed: readonly ComputedExplanation[];
  readonly source?: string;
  /** The words of the dictation that the value came from. */
  readonly dictated?: string;
}

export interface ComputedExplanation {
  /** Name and value, as the trade writes it. */
  readonly says: string;
  /** Inputs, method and source. */
  readonly rests: string;
  readonly cautions: readonly string[];
}

/** More values than these are a page of their own. */
const SHOWN = 3;

/** Explains the key or value at an offset; nothing on white space, within comments, or of fields that are not known. */
export function explainAt(reading: NoteReading, computed: ComputedNote, offset: number): Explanation | undefined {
  const comment = reading.tree.comments.find(({ span }) => span.start <= offset && offset <= span.end);
  if (comment !== undefined) return explainAllowance(comment.text, comment.span);
  const aim = spotAt(reading.tree, reading.kind, offset);
  if (aim?.spot.plan === undefined) return undefined;
  const span = aim.on === 'key' ? aim.spot.key : aim.spot.node?.span;
  if (span === undefined || span === null || isLongProse(aim)) return undefined;
  const { plan, path } = aim.spot;
  const { guide } = plan;
  return {
    span,
    title: guide.label,
    meaning: guide.meaning,
    expects: [...expected(plan), ...term(plan, aim)],
    computed: computedFor(computed, path),
    ...(guide.source === undefined ? {} : { source: guide.source }),
  };
}

/** A block of prose would make every word of it ask for an explanation. */
function isLongProse({ spot, on }: Aim): boolean {
  return on === 'value' && spot.plan?.guide.prose === true;
}

function explainAllowance(text: string, span: Span): Explanation | undefined {
  const id = /^allow\s+([a-z0-9-]+)/u.exec(text)?.[1];
  const check = id === undefined ? undefined : checkById(id);
  if (check === undefined) return undefined;
  return { span, title: check.id, meaning: check.summary, expects: [], computed: [] };
}

function expected(plan: Plan): readonly string[] {
  if (plan.kind !== 'value') return [...fieldsOf(plan), ...says(plan)];
  const { guide, notation } = plan;
  const unit = notation.unit === undefined || notation.unit === '' ? '' : ` ${notation.unit}`;
  const sentences: string[] = [];
  if (unit !== '') sentences.push(`In${unit}; a bare number counts as${unit}.`);
  if (guide.usual !== undefined) sentences.push(`Usually ${range(guide.usual)}${unit}.`);
  if (guide.possible !== undefined) sentences.push(`Possible ${range(guide.possible)}${unit}.`);
  if (guide.usual === undefined && guide.possible === undefined && guide.example !== undefined) {
    sentences.push(`For example ${guide.example}.`);
  }
  return [...sentences, ...says(plan)];
}

const NAMED = 8;

function fieldsOf(plan: GroupPlan | ListPlan): readonly string[] {
  const group = plan.kind === 'list' ? plan.item : plan;
  const names =
    group.kind === 'group' ? [...group.fields.keys()] : (group.notation.words ?? []).map(({ word }) => word);
  if (names.length === 0) return ['A list.'];
  const shown = `${names.slice(0, NAMED).join(', ')}${names.length > NAMED ? ', …' : ''}.`;
  if (plan.kind === 'group') return [`Has ${shown}`];
  return [`A list; ${group.kind === 'group' ? 'each entry has' : 'of'} ${shown}`];
}

function says({ guide }: Plan): readonly string[] {
  return guide.says === undefined ? [] : [`Where there was none, write ${guide.says.join(' or ')}.`];
}

function range([from, to]: readonly [number, number]): string {
  return `${from} to ${to}`;
}

/** What the word at the cursor means, where the vocabulary says. */
function term(plan: ValuePlan | GroupPlan | ListPlan, { spot, on }: Aim): readonly string[] {
  if (plan.kind !== 'value' || on !== 'value' || spot.node?.kind !== 'scalar') return [];
  const reading = plan.notation.read(spot.node.text);
  const word = plan.notation.words?.find((each) => reading.ok && each.word === reading.value);
  if (word === undefined) return [];
  const understood = word.word === spot.node.text ? [] : [`Understood as “${word.word}”.`];
  return word.meaning === undefined ? understood : [...understood, `${word.word}: ${word.meaning}`];
}

/** The values worth a place beside their line in full, the others by name; the page of computed values has all. */
function computedFor(computed: ComputedNote, path: Path): readonly ComputedExplanation[] {
  const here = computed.values.filter((value) => samePath(value.path, path));
  const full = here.filter(({ inline }) => inline).slice(0, SHOWN);
  const short = here.filter((value) => !full.includes(value)).slice(0, NAMED);
  const cautioned = new Set<string>();
  return [
    ...full.map((value) => {
      const cautions = value.cautions.filter((caution) => !cautioned.has(caution));
      for (const caution of cautions) cautioned.add(caution);
      return { ...explainComputed(value), cautions };
    }),
    ...(short.length === 0 ? [] : [named(short, cautioned)]),
    ...computed.notComputed
      .filter((each) => samePath(each.path, path))
      .slice(0, SHOWN)
      .map(({ name, because }) => ({
        says: `${nameOf(name)}: not computed because ${because}`,
        rests: '',
        cautions: [],
      })),
  ];
}

function named(values: readonly ComputedValue[], cautioned: ReadonlySet<string>): ComputedExplanation {
  return {
    says: '',
    rests: `Also computed: ${values.map(({ name, display }) => `${nameOf(name)} ${display}`).join('; ')}.`,
    cautions: [...new Set(values.flatMap(({ cautions }) => cautions))].filter((caution) => !cautioned.has(caution)),
  };
}

export function explainComputed(value: ComputedValue): ComputedExplanation {
  const inputs = inputsInWords(value);
  return {
    says: `${nameOf(value.name)}: ${value.display}`,
    rests: `${inputs.length === 0 ? '' : `From ${inputs.join(', ')}. `}${ended(value.method)} ${ended(value.source)}`,
    cautions: value.cautions,
  };
}

/** Proper names within the names of computed values. */
const SPELT: readonly (readonly [RegExp, string])[] = [
  [/\bsrk t\b/u, 'SRK/T'],
  [/\bholladay\b/u, 'Holladay'],
  [/\bhoffer q\b/u, 'Hoffer Q'],
  [/\bhaigis\b/u, 'Haigis'],
  [/\bt2\b/u, 'T2'],
  [/\blogmar\b/u, 'logMAR'],
];

/** The name of a computed value or a field as words. */
export function nameOf(name: string): string {
  return SPELT.reduce((words, [found, spelt]) => words.replace(found, spelt), name.replace(/[-_]/gu, ' '));
}

function ended(sentence: string): string {
  const trimmed = sentence.trim();
  const begun = trimmed.slice(0, 1).toUpperCase() + trimmed.slice(1);
  return /[.!?]$/u.test(begun) ? begun : `${begun}.`;
}

export function samePath(a: Path, b: Path): boolean {
  return a.length === b.length && a.every((step, index) => step === b[index]);
}
