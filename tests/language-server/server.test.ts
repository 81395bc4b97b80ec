import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { CodeAction, CompletionItem, DocumentSymbol, Hover, InlayHint, TextEdit } from 'vscode-languageserver';
import { applied, TestEditor } from './editor.ts';

const sample = readFileSync(new URL('../../samples/sound/long-eye-ring.opnote.yaml', import.meta.url), 'utf8');
const note = 'file:///set/2031/a.opnote.yaml';

const labels = (items: readonly CompletionItem[]) => items.map(({ label }) => label);

let editor: TestEditor;
beforeEach(async () => {
  editor = await TestEditor.inProcess();
});
afterEach(() => editor.stop());

describe('remarks', () => {
  it('are none for a sound note, and are there after a faulty edit and gone after its repair', async () => {
    expect(await editor.open(note, sample)).toEqual([]);
    const faulty = await editor.edit(note, sample.replace('eye: left\nwhich-eye', 'eye: lefft\nwhich-eye'));
    expect(faulty.map(({ code }) => code)).toContain('unknown-word');
    expect(await editor.edit(note, sample)).toEqual([]);
  });

  it('carry severity, source, place, a link and their fixes', async () => {
    const [remark] = await editor
      .open(note, 'opnote: 1\nrecord: operation\nstatus: draft\npreop:\n  pupil: 7,5 mm\n')
      .then((all) => all.filter(({ code }) => code === 'decimal-comma'));
    expect(remark).toMatchObject({
      severity: 1,
      source: 'sideport',
      range: { start: { line: 4, character: 9 }, end: { line: 4, character: 15 } },
      codeDescription: { href: 'sideport:/checks/decimal-comma.md' },
      data: { fixes: [{ safety: 'safe', edits: [{ newText: '7.5 mm' }] }] },
    });
  });

  it('belong to the latest version of a burst of edits, and no version is answered twice', async () => {
    await editor.open(note, sample);
    const from = editor.published.length;
    let version = 0;
    for (let i = 1; i <= 20; i++) version = await editor.type(note, `${sample}# ${'x'.repeat(i)}\n`);
    await editor.edit(note, sample);
    const versions = editor.published.slice(from).map((params) => params.version);
    expect(versions.at(-1)).toBe(version + 1);
    expect(new Set(versions).size).toBe(versions.length);
    expect(versions.length).toBeLessThan(10);
  });

  it('name the lines of other places in words where an editor cannot show these', async () => {
    const text = 'opnote: 1\nrecord: operation\nstatus: draft\neye: left\nsafety:\n  site-marked: right\n';
    const plain = await TestEditor.inProcess({ capabilities: {} });
    const [folded] = (await plain.open(note, text)).filter(({ code }) => code === 'marked-eye-differs');
    const [shown] = (await editor.open(note, text)).filter(({ code }) => code === 'marked-eye-differs');
    const [place] = shown?.relatedInformation ?? [];
    const words = typeof shown?.message === 'string' ? shown.message : '';
    expect(place).toBeDefined();
    expect(folded?.relatedInformation).toBeUndefined();
    expect(folded?.message).toBe(
      `${words} See: ${place?.message} (line ${(place?.location.range.start.line ?? 0) + 1}).`,
    );
    await plain.stop();
  });

  it('are taken away when the note is closed', async () => {
    await editor.open(note, 'opnote: 1\nrecord: operation\neye: lefft\n');
    expect(editor.diagnostics(note).length).toBeGreaterThan(0);
    await editor.close(note);
    expect(editor.diagnostics(note)).toEqual([]);
  });

  it.each([
    ['CRLF', '\r\n'],
    ['LF', '\n'],
  ])('stand at the right place with %s, a byte order mark and an emoji', async (_, eol) => {
    const text = ['\uFEFFopnote: 1', 'record: operation', 'place: "🏥"', 'eye: lefft # 👁', ''].join(eol);
    const remarks = await editor.open(note, text);
    expect(remarks.find(({ code }) => code === 'unknown-word')?.range).toEqual({
      start: { line: 3, character: 5 },
      end: { line: 3, character: 10 },
    });
  });
});

describe('completion', () => {
  it('comes in order, with explicit edits on one line, and its snippets only to an editor that has them', async () => {
    const at = await editor.openAt(note, 'opnote: 1\nrecord: operation\ncap‸\n');
    const items = await editor.request<CompletionItem[]>('textDocument/completion', at);
    const order = items.map(({ sortText }) => sortText ?? '');
    expect(order).toEqual(order.toSorted((a, b) => (a < b ? -1 : 1)));
    expect(items.find(({ label }) => label === 'capsulotomy')?.textEdit).toEqual({
      newText: 'capsulotomy:\n  ',
      insert: { start: { line: 2, character: 0 }, end: { line: 2, character: 3 } },
      replace: { start: { line: 2, character: 0 }, end: { line: 2, character: 3 } },
    });
    expect(labels(items)).toContain('capsulotomy …');
    const plain = await TestEditor.inProcess({ capabilities: {} });
    const here = await plain.openAt(note, 'opnote: 1\nrecord: operation\ncap‸\n');
    const few = await plain.request<CompletionItem[]>('textDocument/completion', here);
    expect(labels(few)).not.toContain('capsulotomy …');
    expect(few[0]?.textEdit).toHaveProperty('range');
    await plain.stop();
  });

  it('is not opened by the blanks that indent a line', async () => {
    const at = await editor.openAt(note, 'opnote: 1\npreop:\n  ‸');
    const asked = (triggerKind: number, triggerCharacter?: string) =>
      editor.request<CompletionItem[]>('textDocument/completion', {
        ...at,
        context: { triggerKind, triggerCharacter },
      });
    expect(await asked(2, ' ')).toEqual([]);
    expect((await asked(1)).length).toBeGreaterThan(0);
    expect(editor.initialized.capabilities.completionProvider?.triggerCharacters).not.toContain(':');
  });

  it('asks again behind a field where the editor can', async () => {
    const other = await TestEditor.inProcess({ initializationOptions: { commands: ['sideport.proposeAgain'] } });
    const at = await other.openAt(note, 'opnote: 1\nrecord: operation\n‸');
    const items = await other.request<CompletionItem[]>('textDocument/completion', at);
    expect(items.find(({ label }) => label === 'urgency')?.command?.command).toBe('sideport.proposeAgain');
    expect(items.find(({ label }) => label === 'dye: none')?.command).toBeUndefined();
    await other.stop();
  });
});

describe('hover', () => {
  it('explains a field shortly, in Markdown or in plain text', async () => {
    const at = await editor.openAt(note, 'opnote: 1\nincisions:\n  - kind: main\n    wi‸dth: 2.2 mm\n');
    const hover = await editor.request<Hover>('textDocument/hover', at);
    expect(hover.contents).toMatchObject({ kind: 'markdown' });
    expect(JSON.stringify(hover.contents)).toContain('**Width**: Width as made');
    expect(JSON.stringify(hover.contents)).toContain('Usually 0.5 to 7 mm');
    const plain = await TestEditor.inProcess({ capabilities: {} });
    const here = await plain.openAt(note, 'opnote: 1\nincisions:\n  - kind: main\n    wi‸dth: 2.2 mm\n');
    expect((await plain.request<Hover>('textDocument/hover', here)).contents).toMatchObject({ kind: 'plaintext' });
    await plain.stop();
  });

  it('is silent on white space, comments and prose', async () => {
    for (const text of [
      'opnote: 1\n\n‸\neye: left\n',
      'opnote: 1\n# no‸te\n',
      'opnote: 1\nfindings: deep cham‸ber\n',
    ]) {
      const at = await editor.openAt(note, text);
      expect(await editor.request('textDocument/hover', at)).toBeNull();
    }
  });
});

/** The edits that format a line, or lines. */
const formatLine = (first: number, last = first) =>
  editor.request<TextEdit[]>('textDocument/rangeFormatting', {
    textDocument: { uri: note },
    range: { start: { line: first, character: 0 }, end: { line: last + 1, character: 0 } },
    options: { tabSize: 2, insertSpaces: true },
  });

describe('the other requests', () => {
  it('outline, fold, select and colour the note', async () => {
    await editor.open(note, sample);
    const textDocument = { uri: note };
    const symbols = await editor.request<DocumentSymbol[]>('textDocument/documentSymbol', { textDocument });
    expect(symbols.map(({ name }) => name)).toContain('incisions');
    const incisions = symbols.find(({ name }) => name === 'incisions');
    expect(incisions?.children?.map(({ detail }) => detail)).toEqual(['main', 'side-port', 'side-port']);
    const folds = await editor.request<{ startLine: number }[]>('textDocument/foldingRange', { textDocument });
    expect(folds.map(({ startLine }) => startLine)).toContain(
      sample.slice(0, sample.indexOf('\nincisions')).split('\n').length,
    );
    const position = editor.position(note, sample.indexOf('temporal'));
    const [selection] = await editor.request<{ parent?: object }[]>('textDocument/selectionRange', {
      textDocument,
      positions: [position],
    });
    expect(selection?.parent).toBeDefined();
    const tokens = await editor.request<{ data: number[] }>('textDocument/semanticTokens/full', { textDocument });
    expect(tokens.data.length).toBeGreaterThan(100);
  });

  it('format, and write the unit of the line left by Enter', async () => {
    const text = 'opnote: 1\nrecord: operation\npreop:\n    pupil: 7\n    ';
    await editor.open(note, text);
    const options = { tabSize: 2, insertSpaces: true };
    const whole = await editor.request<TextEdit[]>('textDocument/formatting', { textDocument: { uri: note }, options });
    expect(applied(text, whole)).toBe('opnote: 1\nrecord: operation\npreop:\n  pupil: 7 mm\n');
    const left = await editor.request<TextEdit[]>('textDocument/onTypeFormatting', {
      textDocument: { uri: note },
      position: editor.position(note, text.length),
      ch: '\n',
      options,
    });
    expect(applied(text, left)).toBe('opnote: 1\nrecord: operation\npreop:\n    pupil: 7 mm\n    ');
  });

  it('format a part of the note and nothing else', async () => {
    const text = 'opnote: 1\nrecord: operation\npreop:\n  pupil: 7\n  pressure: 15\n';
    await editor.open(note, text);
    expect(applied(text, await formatLine(3))).toBe(text.replace('pupil: 7', 'pupil: 7 mm'));
  });

  it('move no line of a part out of the column of the lines around it', async () => {
    const text = 'opnote: 1\nrecord: operation\npreop:\n    pupil: 7\n    pressure: 15\n';
    await editor.open(note, text);
    expect(applied(text, await formatLine(3))).toBe(text.replace('pupil: 7', 'pupil: 7 mm'));
    expect(applied(text, await formatLine(3, 4))).toBe(
      'opnote: 1\nrecord: operation\npreop:\n  pupil: 7 mm\n  pressure: 15 mmHg\n',
    );
  });

  it('give the computed values and the colours of the lines in view', async () => {
    await editor.open(note, sample);
    const textDocument = { uri: note };
    const lines = (range: object) => editor.request<InlayHint[]>('textDocument/inlayHint', { textDocument, range });
    const whole = { start: { line: 0, character: 0 }, end: { line: 999, character: 0 } };
    const all = await lines(whole);
    const { line } = all[1]!.position;
    const here = { start: { line, character: 0 }, end: { line: line + 1, character: 0 } };
    const seen = all.filter(({ position }) => position.line === line);
    expect(seen.length).toBeLessThan(all.length);
    expect(await lines(here)).toEqual(seen);
    const { data } = await editor.request<{ data: number[] }>('textDocument/semanticTokens/range', {
      textDocument,
      range: here,
    });
    expect(data[0]).toBe(line);
    expect(data.filter((_, at) => at > 0 && at % 5 === 0).every((down) => down <= 1)).toBe(true);
    expect(data.length).toBeLessThan(50);
  });

  it('offer the fixes of a remark, its page, and what can be done at the cursor', async () => {
    const other = await TestEditor.inProcess({ initializationOptions: { commands: ['sideport.explainCheck'] } });
    const text = 'opnote: 1\nrecord: operation\npreop:\n  pupil: 7,5 mm\ndye:\n';
    const remarks = (await other.open(note, text)).filter(({ code }) => code === 'decimal-comma');
    const actions = await other.request<CodeAction[]>('textDocument/codeAction', {
      textDocument: { uri: note },
      range: remarks[0]?.range,
      context: { diagnostics: remarks },
    });
    expect(actions.map(({ title }) => title)).toEqual(['Write “7.5 mm”', 'Explain “decimal-comma”']);
    expect(actions[0]).toMatchObject({
      isPreferred: true,
      edit: { documentChanges: [{ textDocument: { version: 1 } }] },
    });
    const position = other.position(note, text.indexOf('dye'));
    const more = await other.request<CodeAction[]>('textDocument/codeAction', {
      textDocument: { uri: note },
      range: { start: position, end: position },
      context: { diagnostics: [] },
    });
    expect(more.map(({ title }) => title)).toEqual(['Record as “none”', 'Record as “not recorded”']);
    await other.stop();
  });

  it('answer an unknown document with nothing, and write no word of a note to the log', async () => {
    const textDocument = { uri: 'file:///set/unknown.opnote.yaml' };
    const position = { line: 0, character: 0 };
    expect(await editor.request('textDocument/hover', { textDocument, position })).toBeNull();
    expect(await editor.request('textDocument/completion', { textDocument, position })).toEqual([]);
    expect(
      await editor.request<InlayHint[]>('textDocument/inlayHint', {
        textDocument,
        range: { start: position, end: position },
      }),
    ).toEqual([]);
    expect(editor.logged).toEqual([]);
  });

  it('give the page of a check and the picture of the eye', async () => {
    await editor.open(note, sample);
    expect(await editor.request('sideport/explainCheck', { check: 'unknown-word' })).toMatchObject({
      title: 'unknown-word',
    });
    expect(await editor.request('sideport/explainCheck', { check: 'no-such-check' })).toBeNull();
    const { line, character } = editor.position(note, sample.indexOf('2.2 mm\n    plane'));
    const picture = await editor.request<{ drawings: { svg: string; marks: { id: string; at: object }[] }[] }>(
      'sideport/picture',
      {
        uri: note,
        line,
        character,
      },
    );
    expect(picture.drawings[0]?.svg).toContain('Left eye, as the surgeon sees it');
    expect(picture.drawings[0]?.svg.match(/class="sp-part sp-emphasis"/g)).toHaveLength(1);
    expect(
      picture.drawings[0]?.marks.some(
        ({ at }) => JSON.stringify(at) === JSON.stringify(editor.position(note, sample.indexOf('kind: main'))),
      ),
    ).toBe(true);
  });
});
