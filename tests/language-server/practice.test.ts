import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import type { Hover } from 'vscode-languageserver';
import { TestEditor, turns } from './editor.ts';

const sample = readFileSync(new URL('../../samples/sound/long-eye-ring.opnote.yaml', import.meta.url), 'utf8');
const note = 'file:///set/2031/a.opnote.yaml';

let editor: TestEditor;
afterEach(() => editor.stop());

describe('practice on the first note', () => {
  it.each([
    ['a sound note', sample],
    ['a faulty one', sample.replace('eye: left', 'eye: lefft')],
    ['a text that is no note', 'a: [\n'],
    ['an empty text', ''],
  ])('says nothing of its own: %s', async (_what, text) => {
    editor = await TestEditor.inProcess({ practice: 20 });
    await editor.open(note, text);
    await turns(400);
    const quiet = await TestEditor.inProcess();
    await quiet.open(note, text);
    await turns(400);
    expect(editor.published).toEqual(quiet.published);
    expect(editor.logged).toEqual([]);
    const edited = `${text}\n# a comment\n`;
    expect(await editor.edit(note, edited)).toEqual(await quiet.edit(note, edited));
    await quiet.stop();
  });

  it('lets edits and questions in', async () => {
    editor = await TestEditor.inProcess({ practice: 100_000 });
    await editor.open(note, sample);
    await turns(20);
    const faulty = await editor.edit(note, sample.replace('eye: left\nwhich-eye', 'eye: lefft\nwhich-eye'));
    expect(faulty.map(({ code }) => code)).toContain('unknown-word');
    const place = editor.position(note, sample.indexOf('axial-length') + 3);
    const hover = await editor.request<Hover | null>('textDocument/hover', {
      textDocument: { uri: note },
      position: place,
    });
    expect(JSON.stringify(hover)).toContain('Axial length');
    expect(await editor.edit(note, sample)).toEqual([]);
  });

  it('does not keep another note waiting', async () => {
    editor = await TestEditor.inProcess({ practice: 100_000 });
    await editor.open(note, sample);
    await turns(20);
    const other = 'file:///set/2031/b.opnote.yaml';
    const remarks = await editor.open(other, sample.replace('eye: left\nwhich-eye', 'eye: lefft\nwhich-eye'));
    expect(remarks.map(({ code }) => code)).toContain('unknown-word');
  });

  it('ends', async () => {
    let asked = 0;
    editor = await TestEditor.inProcess({ practice: 5, onTurn: () => void (asked += 1) });
    await editor.open(note, sample);
    await turns(200);
    const before = asked;
    expect(before).toBeGreaterThan(20);
    await turns(200);
    expect(asked).toBe(before);
  });
});
