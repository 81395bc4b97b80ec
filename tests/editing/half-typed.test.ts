import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { complete } from '../../server/src/note/editing/complete.ts';
import { explainAt } from '../../server/src/note/editing/explain.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';

const samples = new URL('../../samples/sound/', import.meta.url);
const files = readdirSync(samples).filter((file) => file.endsWith('.opnote.yaml'));
const nothing = { values: [], notComputed: [] };

/** What a proposal would take away: only blanks, or the beginning of the field or value that it completes. */
function lostBy(typed: string, insert: string): string | undefined {
  const isField = /^[\w-]+:/u.test(insert.trimStart());
  const kept = typed.trim() === '' || !(isField && /[:#]/u.test(typed));
  return kept ? undefined : typed;
}

it.each(files)(
  '%s is completed and explained at every letter, and nothing typed is lost',
  (file) => {
    const text = readFileSync(new URL(file, samples), 'utf8');
    const wrong: string[] = [];
    for (let offset = 1; offset <= text.length; offset++) {
      const prefix = text.slice(0, offset);
      const reading = readNote(prefix);
      explainAt(reading, nothing, offset);
      const lineStart = prefix.lastIndexOf('\n') + 1;
      for (const { replace, insert } of complete({ reading, surroundings: {} }, offset)) {
        const lost = lostBy(prefix.slice(replace.start, replace.end), insert);
        if (replace.start < lineStart || replace.end !== offset || lost !== undefined)
          wrong.push(`${offset} ${insert} ${lost ?? ''}`);
      }
    }
    expect(wrong).toEqual([]);
  },
  120_000,
);
