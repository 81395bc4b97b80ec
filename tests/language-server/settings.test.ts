import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { CodeLens, InlayHint } from 'vscode-languageserver';
import { fullCapabilities, TestEditor } from './editor.ts';

const sample = readFileSync(new URL('../../samples/sound/long-eye-ring.opnote.yaml', import.meta.url), 'utf8');
const note = 'file:///set/a.opnote.yaml';

let editor: TestEditor;
let settings: unknown;
let asked: { readonly scopeUri?: string; readonly section?: string }[];
beforeEach(async () => {
  settings = null;
  asked = [];
  editor = await TestEditor.inProcess({
    capabilities: { ...fullCapabilities, workspace: { ...fullCapabilities.workspace, configuration: true } },
    initializationOptions: { commands: ['sideport.showComputed'] },
  });
  editor.connection.onRequest('workspace/configuration', ({ items }: { items: typeof asked }) => {
    asked.push(...items);
    return items.map(() => settings);
  });
  await editor.open(note, sample);
});
afterEach(() => editor.stop());

const textDocument = { uri: note };
const hints = () =>
  editor.request<InlayHint[]>('textDocument/inlayHint', {
    textDocument,
    range: { start: { line: 0, character: 0 }, end: { line: 999, character: 0 } },
  });
const lenses = () => editor.request<CodeLens[]>('textDocument/codeLens', { textDocument });

const change = (to: unknown) => {
  settings = to;
  return editor.connection.sendNotification('workspace/didChangeConfiguration', { settings: null });
};

describe('what a surgeon can choose', () => {
  it('is asked for the folder of the note, once', async () => {
    await hints();
    await lenses();
    expect(asked).toEqual([{ scopeUri: note, section: 'sideport.computedValues' }]);
  });

  it('is on unless it is off, and heard as soon as it is changed', async () => {
    expect((await hints()).length).toBeGreaterThan(0);
    expect((await lenses()).length).toBeGreaterThan(0);
    await change({ besideLines: false, aboveSections: true });
    expect(await hints()).toEqual([]);
    expect((await lenses()).length).toBeGreaterThan(0);
    await change({ besideLines: true, aboveSections: false });
    expect((await hints()).length).toBeGreaterThan(0);
    expect(await lenses()).toEqual([]);
    await change('no settings');
    expect((await hints()).length).toBeGreaterThan(0);
  });
});
