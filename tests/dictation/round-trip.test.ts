import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { dictate } from '../../server/src/note/dictation/dictate.ts';
import { sameMeaning } from '../../server/src/note/dictation/note-view.ts';
import { speak } from '../../server/src/note/dictation/speak.ts';
import type { NoteReading } from '../../server/src/note/reading/note-reading.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';

const folder = fileURLToPath(new URL('../../samples/sound', import.meta.url));

const operations = readdirSync(folder)
  .filter((name) => name.endsWith('.opnote.yaml'))
  .map((name): readonly [string, NoteReading] => [name, readNote(readFileSync(`${folder}/${name}`, 'utf8'))])
  .filter(([, reading]) => reading.kind === 'operation');

/** The keys of a path, without the positions in lists. */
function keysOf(path: readonly (string | number)[]): string {
  return path.filter((step) => typeof step === 'string').join('.');
}

interface At {
  readonly path: readonly (string | number)[];
  readonly value: string | null;
}

/** Whether a value is among others of its field; a drug may be written with its strength behind it. */
function isIn({ path, value }: At, others: readonly At[]): boolean {
  const text = value ?? '';
  return others.some((other) => {
    const written = other.value ?? '';
    if (keysOf(other.path) !== keysOf(path)) return false;
    return sameMeaning(path, written, text) || written.startsWith(`${text} `) || text.startsWith(`${written} `);
  });
}

describe.each(operations)('%s, spoken aloud and dictated back', (_, reading) => {
  const aloud = speak(reading);

  it('beside the note: every value agrees, nothing contradicts it, no word is lost', () => {
    const result = dictate(aloud.text, reading);
    expect(result.conflicts).toEqual([]);
    expect(result.unmatched).toEqual([]);
    expect(result.values.filter(({ because }) => because !== 'the note says the same')).toEqual([]);
  });

  it('alone: at least 95 of 100 values come back, and none that the note does not have', () => {
    const values = dictate(aloud.text).values.filter(({ state }) => state !== 'unresolved');
    const recovered = aloud.spoken.filter((one) => isIn(one, values));
    expect(recovered.length / aloud.spoken.length).toBeGreaterThanOrEqual(0.95);
    const written = [
      ...reading.values.map(({ field }) => ({ path: field.path, value: field.text })),
      // Words that say why there is nothing are no values of the note, and are said all the same.
      ...aloud.spoken,
    ];
    expect(values.filter((one) => !isIn(one, written)).map(({ path, value }) => `${keysOf(path)}: ${value}`)).toEqual(
      [],
    );
  });

  it('says a good part of what the note has', () => {
    expect(aloud.spoken.length).toBeGreaterThan(reading.status === 'planned' ? 10 : 70);
  });
});
