// What a dictation of 400 words costs, as a ratio in one run.   node tests/speed/dictating.mjs [rounds]
//  - words into values, against parseDocument of yaml's Node build on the note that they give: at most 5
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseDocument } from 'yaml';
import { coreModule } from './core.mjs';
import { best } from './measured.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const { dictate, noteFromDictation, readNote, speak } = await coreModule(
  'dictating',
  `export { dictate } from './server/src/note/dictation/dictate.ts';
export { noteFromDictation } from './server/src/note/dictation/placing.ts';
export { speak } from './server/src/note/dictation/speak.ts';
export { readNote } from './server/src/note/reading/read-note.ts';`,
);

/** @param {bigint} since */
const milliseconds = (since) => Number(process.hrtime.bigint() - since) / 1e6;
const start = process.hrtime.bigint();
dictate('Right eye.');
console.log(`The first dictation in a process, with the phrases: ${milliseconds(start).toFixed(0)} ms.`);

const rounds = Number(process.argv[2] ?? 200);
const first400 = (text) => text.split(/\s+/u).slice(0, 400).join(' ');
const folder = join(root, 'tests/dictation/spoken');
const dictations = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .flatMap((name) => JSON.parse(readFileSync(join(folder, name), 'utf8')));
const sample = readFileSync(join(root, 'samples/sound/capsule-tear-right.opnote.yaml'), 'utf8');
const texts = {
  'a sound note read aloud': first400(speak(readNote(sample)).text),
  'dictations, one after the other': first400(dictations.map(({ text }) => text).join(' ')),
};

for (const [name, text] of Object.entries(texts)) {
  const note = noteFromDictation(text).text;
  const times = { dictate: [], parse: [] };
  // In turns, so that whatever else the machine does falls on both.
  for (let round = 0; round < rounds; round++) {
    for (const [what, run] of [
      // Never the same words twice: what they say would be remembered.
      ['dictate', () => dictate(`${text} ${round}`)],
      ['parse', () => parseDocument(note)],
    ]) {
      const from = process.hrtime.bigint();
      run();
      times[what].push(milliseconds(from));
    }
  }
  const [dictated, parsed] = [best(times.dictate), best(times.parse)];
  console.log(
    `${name}: 400 words, ${note.split('\n').length} lines; dictate ${dictated.toFixed(2)} ms, parseDocument ${parsed.toFixed(2)} ms, each at best; ratio ${(dictated / parsed).toFixed(2)}   (at most 5)`,
  );
}
