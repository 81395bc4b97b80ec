import { describe, expect, it } from 'vitest';
import { dictate } from '../../server/src/note/dictation/dictate.ts';
import { noteFromDictation } from '../../server/src/note/dictation/placing.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import type { NoteReading } from '../../server/src/note/reading/note-reading.ts';
import { toNeutral, type NeutralField } from '../reference/dictation-keys.mjs';
import { seeded } from '../robustness/mutate.ts';
import { keys, ownExamples, referenceExamples, type Example } from './score.ts';

const homophones: Readonly<Record<string, readonly string[]>> = {
  right: ['write', 'rite', 'light'],
  left: ['lift', 'let', 'leapt'],
  no: ['know', 'now', 'note'],
  two: ['to', 'too'],
  four: ['for', 'fore'],
  eight: ['ate'],
  one: ['won'],
  rhexis: ['rex is', 'wrecks is'],
  lens: ['lends', 'lance'],
  bag: ['back', 'beg'],
  plus: ['plush', 'blus'],
  minus: ['mine is', 'miners'],
  bottle: ['bottom', 'battle'],
  vacuum: ['back you'],
  phaco: ['fake oh', 'faker'],
  piece: ['peace'],
  incision: ['in season'],
  intact: ['in tact', 'in fact'],
  torn: ['thorn'],
  vitreous: ['victorious'],
};

type Damage = (words: readonly string[], pick: (below: number) => number) => readonly string[];

const damages: readonly Damage[] = [
  (words, pick) => words.toSpliced(pick(words.length), 1),
  (words, pick) => words.toSpliced(pick(words.length), 2),
  (words, pick) => {
    const at = pick(words.length - 1);
    return words.toSpliced(at, 2, words[at + 1] ?? '', words[at] ?? '');
  },
  (words, pick) => changed(words, pick, (word) => homophones[word]),
  (words, pick) => changed(words, pick, (word) => ({ right: ['left'], left: ['right'] })[word]),
  (words, pick) => words.toSpliced(pick(words.length), 0, words[pick(words.length)] ?? ''),
  (words, pick) =>
    words.toSpliced(
      pick(words.length),
      0,
      ['gorbel', 'no', 'not', 'left', 'right', 'ninety', 'correction'][pick(7)] ?? '',
    ),
];

function bare(word: string): string {
  return word.toLowerCase().replace(/[^a-z]/gu, '');
}

/** One word among those that have another form is changed. */
function changed(
  words: readonly string[],
  pick: (below: number) => number,
  forms: (word: string) => readonly string[] | undefined,
): readonly string[] {
  const places = words.flatMap((word, at) => (forms(bare(word)) === undefined ? [] : [at]));
  const at = places[pick(places.length)];
  const other = at === undefined ? undefined : forms(bare(words[at] ?? ''));
  return at === undefined || other === undefined ? words : words.toSpliced(at, 1, other[pick(other.length)] ?? '');
}

interface Case {
  readonly example: Example;
  /** The note that the sound dictation gives, every mark confirmed: a second source for what is dictated again. */
  readonly note: NoteReading;
}

const cases: readonly Case[] = [...referenceExamples, ...ownExamples].map((example) => {
  const { text } = noteFromDictation(example.text);
  return { example, note: readNote(text.replace(/ # proposed from the dictation: “[^”\n]*”/gu, '')) };
});

/** Numbers that stand in a dictation, however they are written. */
function isSaid({ value, start, end }: NeutralField, text: string): boolean {
  const words = text.slice(start, end).toLowerCase();
  if (value === 'right') return /right|\bod\b|\bre\b/u.test(words);
  if (value === 'left') return /left|\bos\b|\ble\b/u.test(words);
  if (typeof value !== 'number') return words.trim() !== '';
  return /\d|zero|nought|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|half|quarter|plano|emmetropi/u.test(
    words,
  );
}

describe('ten thousand damaged dictations', () => {
  const random = seeded(20310314);
  const pick = (below: number): number => Math.floor(random() * below);
  const bad: string[] = [];
  let filledSides = 0;
  let damagedTexts = 0;

  it('never give a filled side that is wrong, nor a filled critical value that was not said', () => {
    for (let round = 0; round < 10_000; round += 1) {
      const { example, note } = cases[round % cases.length]!;
      const damage = damages[pick(damages.length)]!;
      const text = damage(example.text.split(' '), pick).join(' ');
      if (text !== example.text) damagedTexts += 1;
      const withNote = round % 2 === 1;
      const result = dictate(text, withNote ? note : undefined);
      for (const { start, end, text: words } of [...result.values, ...result.unmatched, ...result.withdrawn]) {
        if (start < 0 || end <= start || end > text.length || text.slice(start, end) !== words)
          bad.push(`${text}: a span is wrong`);
      }
      for (const field of toNeutral(result).fields.filter(({ state }) => state === 'filled')) {
        if (field.key === 'laterality') {
          filledSides += 1;
          if (!withNote) bad.push(`${text}: side filled without a second source`);
          else if (field.value !== note.note?.['eye' as never]?.['value' as never])
            bad.push(`${text}: side ${JSON.stringify(field.value)}`);
        }
        if (keys[field.key]?.critical !== true) continue;
        if (!withNote) bad.push(`${text}: ${field.key} filled without a second source`);
        if (!isSaid(field, text)) bad.push(`${text}: ${field.key} = ${JSON.stringify(field.value)} was not said`);
      }
    }
    expect(bad.slice(0, 20)).toEqual([]);
    expect(damagedTexts).toBeGreaterThan(8000);
    expect(filledSides).toBeGreaterThan(1000);
  }, 300_000);
});
