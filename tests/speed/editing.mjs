// Editing a note: this server against the general-purpose YAML language server with the published JSON Schema, on the
// same note in the same run.   node tests/speed/editing.mjs [edits]
//  - edit to diagnostics, wall time as users get it: at most 1/40 of the other's
//  - the server's processor time for the same: at most 0.6
//  - completion and hover right after an edit: at most 0.5
import { copyFileSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { Server } from './protocol-client.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const edits = Number(process.argv[2] ?? 40);
const folder = mkdtempSync(join(tmpdir(), 'editing-'));
copyFileSync(join(root, 'schemas/published/opnote.schema.json'), join(folder, 'opnote.schema.json'));
// About 150 lines: the note up to its after-care, with the head of a draft.
const whole = readFileSync(join(root, 'samples/sound/routine-right.opnote.yaml'), 'utf8').replaceAll('\r\n', '\n');
const text = `${whole.replace('status: final', 'status: draft').split('\n').slice(0, 150).join('\n')}\n`;

const servers = [
  ['this server', [join(root, 'server/dist/language-server.cjs'), '--stdio'], 'opnote', 'note.opnote.yaml', {}],
  [
    'general-purpose server',
    [join(root, 'node_modules/yaml-language-server/bin/yaml-language-server'), '--stdio'],
    'yaml',
    'note.yaml',
    {
      yaml: {
        schemas: { [pathToFileURL(join(folder, 'opnote.schema.json')).href]: ['*.yaml'] },
        schemaStore: { enable: false },
        validate: true,
        hover: true,
        completion: true,
      },
    },
  ],
];

const figures = [];
for (const [name, words, languageId, file, settings] of servers) {
  const server = await Server.start(words, pathToFileURL(folder).href, settings);
  const uri = pathToFileURL(join(folder, file)).href;
  const place = (line, at) => ({
    textDocument: { uri },
    position: { line: text.slice(0, text.indexOf(line)).split('\n').length - 1, character: at },
  });
  const hovered = place('    axial-length: ', 8);
  const completed = place('  alpha-blocker: ', 17);
  await server.open(uri, languageId, text);
  const wall = [];
  const processor = [];
  const hover = [];
  const complete = [];
  for (let i = 0; i < edits; i++) {
    // A value that is wrong, then right again: each edit must change what is said.
    const spoilt = text.replace('urgency: elective', 'urgency: elektive');
    const before = server.processorTime();
    wall.push(await server.edit(uri, i % 2 === 0 ? spoilt : text));
    processor.push(server.processorTime() - before);
  }
  for (let i = 0; i < edits; i++) {
    hover.push(await server.editAndAsk(uri, `${text}# ${i}\n`, 'textDocument/hover', hovered));
    complete.push(await server.editAndAsk(uri, `${text}# ${i}.\n`, 'textDocument/completion', completed));
  }
  await server.stop();
  figures.push({ name, wall, processor, hover, complete, missed: server.missed });
}
rmSync(folder, { recursive: true });

const at = (values, share) =>
  values.toSorted((a, b) => a - b)[Math.min(values.length - 1, Math.floor(values.length * share))];
for (const { name, wall, processor, hover, complete, missed } of figures) {
  const shown = (values) => `${at(values, 0.5).toFixed(2)} ms, p95 ${at(values, 0.95).toFixed(2)}`;
  console.log(
    `${String(name)}: edit to diagnostics ${shown(wall)}; processor ${at(processor, 0.5).toFixed(2)} ms; hover after an edit ${shown(hover)}; completion ${shown(complete)}; missed or stale answers ${missed}`,
  );
}
const [ours, theirs] = figures;
const share = (key) => at(ours[key], 0.5) / at(theirs[key], 0.5);
console.log(`edit to diagnostics, wall        1/${(1 / share('wall')).toFixed(0)}   (at most 1/40)`);
console.log(`edit to diagnostics, processor   ${share('processor').toFixed(2)}   (at most 0.6)`);
console.log(`hover right after an edit        ${share('hover').toFixed(2)}   (at most 0.5)`);
console.log(`completion right after an edit   ${share('complete').toFixed(2)}   (at most 0.5)`);
