import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { TestEditor } from './editor.ts';

const sample = readFileSync(new URL('../../samples/sound/long-eye-ring.opnote.yaml', import.meta.url), 'utf8');
const note = 'file:///set/a.opnote.yaml';

let editor: TestEditor;
beforeEach(async () => {
  editor = await TestEditor.inProcess();
});
afterEach(() => editor.stop());

const prose = () => editor.request<{ title: string; markdown: string } | null>('sideport/prose', { uri: note });

describe('the note as prose', () => {
  it('says the sides, the lens and the caution at the foot', async () => {
    await editor.open(note, sample);
    const page = await prose();
    expect(page?.title).toMatch(/^Operation note: left eye, /u);
    expect(page?.markdown).toContain('Halden Optics HX-1 monofocal lens of +5.5 D');
    expect(page?.markdown).toContain('Check powers, sides and axes against the biometry print-out and the lens box.');
  });

  it('follows the text while it is written, and escapes what Markdown would take for its own', async () => {
    await editor.open(note, sample);
    await editor.edit(note, sample.replace(/^findings:.*$/mu, 'findings: "<b>*dense* plaque</b> [x](command:y)"'));
    expect((await prose())?.markdown).toContain(String.raw`Findings: \<b\>\*dense\* plaque\</b\> \[x\](command:y)`);
  });

  it('is nothing for a text that is no note', async () => {
    await editor.open(note, '- a\n');
    expect(await prose()).toBeNull();
  });
});
