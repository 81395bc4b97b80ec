import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { readNote } from '../../../server/src/note/reading/read-note.ts';
import { reviewNote, type Surroundings } from '../../../server/src/note/review.ts';
import { factsOf, type NoteSet } from '../../../server/src/note/set/note-set.ts';
import { slipKinds } from './kinds.ts';
import { randomOf } from './random.ts';

const folder = fileURLToPath(new URL('../../../samples/sound/', import.meta.url));
const names = readdirSync(folder).filter((name) => name.endsWith('.opnote.yaml'));
const texts = new Map(names.map((name) => [name, readFileSync(`${folder}${name}`, 'utf8')]));
const readings = new Map([...texts].map(([name, text]) => [name, readNote(text)]));
const departmentReading = readNote(readFileSync(`${folder}sideport.yaml`, 'utf8'), 'department');
const set: NoteSet = {
  facts: [...readings].flatMap(([name, reading]) => factsOf(reading, name) ?? []),
  open: (name) => readings.get(name),
};
const department = departmentReading.kind === 'department' ? departmentReading.note : null;
const around = (file: string): Surroundings => ({ set, file, department, today: '2035-01-01' });
const finished = names.filter(
  (name) => readings.get(name)?.kind === 'operation' && readings.get(name)?.status === 'final',
);

const SLIPS = 200;
const SEED = 20310408;

interface Outcome {
  readonly slip: string;
  readonly remarks: readonly string[];
}

function outcomes(): Outcome[] {
  const random = randomOf(SEED);
  const made: Outcome[] = [];
  for (let i = 0; made.length < SLIPS; i++) {
    const file = random.pick(finished) ?? '';
    const text = texts.get(file) ?? '';
    const reading = readings.get(file);
    const kind = slipKinds[i % slipKinds.length];
    const slipped = reading === undefined ? undefined : kind?.make({ text, reading }, random);
    if (slipped === undefined || slipped === text) continue;
    const { remarks } = reviewNote(slipped, around(file));
    made.push({
      slip: `${kind?.name} (${file}): ${difference(text, slipped)}`,
      remarks: remarks.map(({ check, message }) => `${check}: ${message}`),
    });
  }
  return made;
}

/** The first line that was changed. */
function difference(before: string, after: string): string {
  const [a, b] = [before.split('\n'), after.split('\n')];
  const at = a.findIndex((line, i) => line !== b[i]);
  return `${a[at]?.trim()} → ${b[at]?.trim()}`;
}

it(`of ${SLIPS} seeded slips at least 95 % are remarked, each once (at most 0.1 remarks more per slip)`, () => {
  const all = outcomes();
  const missed = all.filter(({ remarks }) => remarks.length === 0).map(({ slip }) => slip);
  const extra = all.filter(({ remarks }) => remarks.length > 1).map(({ slip, remarks }) => [slip, ...remarks]);
  const surplus = extra.reduce((sum, remarks) => sum + remarks.length - 2, 0);
  expect(missed.length, missed.join('\n')).toBeLessThanOrEqual(SLIPS * 0.05);
  expect(surplus, extra.map((remarks) => remarks.join('\n    ')).join('\n')).toBeLessThanOrEqual(SLIPS * 0.1);
});
