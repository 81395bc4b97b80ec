import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { dictate } from '../../server/src/note/dictation/dictate.ts';
import { toNeutral, type Neutral, type NeutralField } from '../reference/dictation-keys.mjs';

/** A dictation with what it says, in neutral keys. */
export interface Example {
  readonly id: string;
  readonly text: string;
  readonly expected: Readonly<Record<string, unknown>>;
  /** Right where it is given, and not missed where it is not. */
  readonly soft: Readonly<Record<string, unknown>>;
  /** Keys that must ask for confirmation. */
  readonly confirm: readonly string[];
  readonly superseded: readonly { readonly key: string; readonly value: unknown }[];
  readonly unmatched: readonly { readonly start: number; readonly end: number }[];
  readonly spans: readonly {
    readonly key: string;
    readonly role: string;
    readonly start: number;
    readonly end: number;
  }[];
}

interface Written {
  readonly id: string;
  readonly text: string;
  readonly expected: Readonly<Record<string, unknown>>;
  readonly soft?: Readonly<Record<string, unknown>>;
  readonly expected_soft?: Readonly<Record<string, unknown>>;
  readonly confirm?: readonly string[];
  readonly must_confirm?: readonly string[];
  readonly superseded?: Example['superseded'];
  readonly unmatched?: Example['unmatched'];
  readonly spans?: Example['spans'];
}

function read(folder: string): readonly Example[] {
  const path = fileURLToPath(new URL(folder, import.meta.url));
  const names = readdirSync(path).filter((name) => name.endsWith('.json') && name !== 'KEYS.json');
  return names.toSorted().flatMap((name) => {
    const content = JSON.parse(readFileSync(`${path}/${name}`, 'utf8')) as Written | readonly Written[];
    return (Array.isArray(content) ? (content as readonly Written[]) : [content as Written]).map((one) => ({
      id: one.id,
      text: one.text,
      expected: one.expected,
      soft: one.soft ?? one.expected_soft ?? {},
      confirm: one.confirm ?? one.must_confirm ?? [],
      superseded: one.superseded ?? [],
      unmatched: one.unmatched ?? [],
      spans: one.spans ?? [],
    }));
  });
}

/** Fifteen dictations that were written before the phrase table, by another hand. */
export const referenceExamples = read('../reference/dictations');
/** Dictations of our own. */
export const ownExamples = read('./spoken');

export const keys = JSON.parse(
  readFileSync(fileURLToPath(new URL('../reference/dictations/KEYS.json', import.meta.url)), 'utf8'),
) as Readonly<
  Record<
    string,
    { readonly type: string; readonly values?: readonly string[]; readonly of?: unknown; readonly critical?: boolean }
  >
>;

export interface Score {
  readonly filled: number;
  readonly expected: number;
  readonly found: number;
  /** Sentences that name what is not as it should be. */
  readonly wrongFilled: readonly string[];
  readonly missed: readonly string[];
  readonly wrongSide: readonly string[];
  readonly criticalWrong: readonly string[];
  readonly leaked: readonly string[];
  readonly unconfirmed: readonly string[];
  readonly unreported: readonly string[];
  readonly misplaced: readonly string[];
}

/** Scores dictations as a reader who knows only the neutral keys would. */
export function score(examples: readonly Example[]): Score {
  const all = examples.map((example) => scoreOne(example, toNeutral(dictate(example.text))));
  const sum = (pick: (one: Score) => number): number => all.reduce((total, one) => total + pick(one), 0);
  const join = (pick: (one: Score) => readonly string[]): readonly string[] => all.flatMap((one) => [...pick(one)]);
  return {
    filled: sum((one) => one.filled),
    expected: sum((one) => one.expected),
    found: sum((one) => one.found),
    wrongFilled: join((one) => one.wrongFilled),
    missed: join((one) => one.missed),
    wrongSide: join((one) => one.wrongSide),
    criticalWrong: join((one) => one.criticalWrong),
    leaked: join((one) => one.leaked),
    unconfirmed: join((one) => one.unconfirmed),
    unreported: join((one) => one.unreported),
    misplaced: join((one) => one.misplaced),
  };
}

function scoreOne(example: Example, { fields, flags, unmatched }: Neutral): Score {
  const { id, text, expected, soft } = example;
  const says = ({ key, value }: NeutralField): string => `${id}: ${key} = ${JSON.stringify(value)}`;
  const isRight = ({ key, value }: NeutralField): boolean => same(value, expected[key]) || same(value, soft[key]);
  const filled = fields.filter(({ state }) => state === 'filled');
  const wrong = filled.filter((field) => !isRight(field));
  const missed = Object.entries(expected).filter(
    ([key, value]) => !fields.some((field) => field.key === key && same(field.value, value)),
  );
  return {
    filled: filled.length,
    expected: Object.keys(expected).length,
    found: Object.keys(expected).length - missed.length,
    wrongFilled: wrong.map(says),
    missed: missed.map(([key, value]) => `${id}: ${key} = ${JSON.stringify(value)}`),
    wrongSide: fields.filter((field) => field.key === 'laterality' && !isRight(field)).map(says),
    criticalWrong: wrong.filter(({ key }) => keys[key]?.critical === true).map(says),
    leaked: fields
      .filter(
        (field) =>
          !isRight(field) && example.superseded.some(({ key, value }) => key === field.key && same(value, field.value)),
      )
      .map(says),
    unconfirmed: example.confirm.filter((key) => !flags.some((flag) => flag.key === key)).map((key) => `${id}: ${key}`),
    unreported: example.unmatched
      .filter((span) => !unmatched.some((other) => overlap(span, other)))
      .map(({ start, end }) => `${id}: “${text.slice(start, end)}”`),
    misplaced: fields
      .filter((field) => isRight(field) && !isWhereExpected(field, example))
      .map((field) => `${says(field)} at “${text.slice(field.start, field.end)}”`),
  };
}

function isWhereExpected(field: NeutralField, { spans }: Example): boolean {
  const known = spans.filter(({ key, role }) => key === field.key && role === 'expected');
  return known.length === 0 || known.some((span) => overlap(span, field));
}

function overlap(
  a: { readonly start: number; readonly end: number },
  b: { readonly start: number; readonly end: number },
): boolean {
  return a.start < b.end && b.start < a.end;
}

function same(a: unknown, b: unknown): boolean {
  if (Array.isArray(a) && Array.isArray(b))
    return JSON.stringify(a.map(String).toSorted()) === JSON.stringify(b.map(String).toSorted());
  return a !== undefined && JSON.stringify(a) === JSON.stringify(b);
}
