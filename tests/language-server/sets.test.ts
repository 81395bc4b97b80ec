import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type {
  CodeAction,
  CompletionItem,
  DocumentLink,
  Location,
  SymbolInformation,
  WorkspaceEdit,
} from 'vscode-languageserver';
import { applied, TestEditor } from './editor.ts';
import { MemoryFiles } from './memory-files.ts';

const root = 'file:///theatre/set';
const department = `sideport: 1
department: Eye unit, invented
staff:
  - ref: S-02
    role: surgeon
    grade: consultant
    seat: temporal
    settings:
      vacuum: 380 mmHg
  - ref: N-11
    role: scrub nurse
lenses:
  - maker: Halden Optics
    model: HX-1
    kind: monofocal
    optic-diameter: 6.0 mm
    device-identifier: "09521234543213"
    powers:
      from: -10.0 D
      to: +30.0 D
      step: 0.5 D
    constants:
      a: 118.9
  - maker: Halden Optics
    model: HT-3
review-schedule:
  - what: pressure and wound
    due: 1 day
    when: always
`;
const operation = `opnote: 1
record: operation
status: draft
id: OP-1
date: 2031-03-14
patient:
  ref: P-1
eye: left
team:
  - role: surgeon
    ref: S-02
lens:
  model: HX-1
`;
const followUp = `opnote: 1
record: follow-up
status: draft
id: FU-1
operation: OP-1
date: 2031-04-11
patient:
  ref: P-1
eye: left
visit: month 1
by: S-02
`;
const stored: Readonly<Record<string, string>> = {
  [`${root}/sideport.yaml`]: department,
  [`${root}/2031/op.opnote.yaml`]: operation,
  [`${root}/2031/fu.opnote.yaml`]: followUp,
  [`${root}/inner/sideport.yaml`]: 'sideport: 1\n',
  [`${root}/inner/other.opnote.yaml`]: operation,
};
const op = `${root}/2031/op.opnote.yaml`;
const fu = `${root}/2031/fu.opnote.yaml`;

let editor: TestEditor;
beforeEach(async () => {
  editor = await TestEditor.inProcess({ files: new MemoryFiles(stored), folders: ['file:///theatre'] });
});
afterEach(() => editor.stop());

/** The set is read in the background; a request that needs all of it waits for it. */
async function setRead(uri: string): Promise<void> {
  await editor.request('textDocument/references', {
    textDocument: { uri },
    position: { line: 3, character: 5 },
    context: { includeDeclaration: true },
  });
}

const choices = async (text: string) => {
  const at = await editor.openAt(`${root}/2031/new.opnote.yaml`, text);
  await setRead(`${root}/2031/new.opnote.yaml`);
  const items = await editor.request<CompletionItem[]>('textDocument/completion', at);
  return items.map(({ label, detail }) => [label, detail ?? '']);
};

describe('completion that knows the department and the set', () => {
  it('proposes the lenses of the list, the planned one first, with stock powers nearest the plan', async () => {
    const plan = 'opnote: 1\nrecord: operation\nid: X\nplan:\n  lens:\n    model: HT-3\n    power: +5.5 D\n';
    expect(await choices(`${plan}lens:\n  model: ‸`)).toEqual([
      ['HT-3', 'as planned'],
      ['HX-1', 'Halden Optics, monofocal'],
      ['not recorded', 'it is not known'],
    ]);
    const powers = await choices(`${plan}lens:\n  model: HX-1\n  power: ‸`);
    expect(powers.slice(0, 5).map(([label]) => label)).toEqual(['+5.5 D', '+6.0 D', '+5.0 D', '+6.5 D', '+4.5 D']);
  });

  it('proposes staff, usual settings, today and the operations of the set', async () => {
    const note = 'opnote: 1\nrecord: operation\nid: X\nteam:\n  - role: surgeon\n    ref: S-02\n';
    expect((await choices(`${note}safety:\n  sign-in:\n    by: ‸`)).slice(0, 2)).toEqual([
      ['S-02', 'surgeon of this team'],
      ['N-11', 'scrub nurse'],
    ]);
    expect((await choices(`${note}nucleus:\n  steps:\n    - step: sculpt\n      vacuum: ‸`))[0]).toEqual([
      '380 mmHg',
      'usual setting of S-02',
    ]);
    expect((await choices('opnote: 1\nrecord: operation\nid: X\ndate: ‸'))[0]).toEqual(['2031-03-20', 'today']);
    expect((await choices('opnote: 1\nrecord: follow-up\nid: X\noperation: ‸'))[0]).toEqual([
      'OP-1',
      'operation, 2031-03-14, P-1',
    ]);
  });
});

describe('a follow-up and its operation', () => {
  it('are checked together, as they are written now and not as they are stored', async () => {
    await editor.open(fu, followUp);
    await editor.open(op, operation);
    await setRead(op);
    const lens = operation.replace('model: HX-1', 'power: +21.0 D');
    const visit = `${followUp}lens:\n  power: +21.5 D\n`;
    await editor.edit(fu, visit);
    const differs = editor.until(fu, (checks) => checks.includes('visit-reports-other-lens'));
    await editor.edit(op, lens);
    await differs;
    const [remark] = editor.diagnostics(fu).filter(({ code }) => code === 'visit-reports-other-lens');
    expect(remark?.relatedInformation?.[0]?.location).toMatchObject({ uri: op, range: { start: { line: 12 } } });
    const agrees = editor.until(fu, (checks) => !checks.includes('visit-reports-other-lens'));
    await editor.edit(op, lens.replace('21.0', '21.5'));
    await agrees;
  });

  it('leads from a remark to the line of the department file that it rests on', async () => {
    const said = await editor.open(op, `${operation}  power: +21.7 D\n`);
    const remark = said.find(({ code }) => code === 'power-not-made');
    expect(remark?.relatedInformation?.[0]).toMatchObject({
      message: 'in stock: -10.0 D to +30.0 D',
      location: { uri: `${root}/sideport.yaml`, range: { start: { line: 18 } } },
    });
  });

  it('are checked together when only one of them is open', async () => {
    await editor.open(fu, followUp.replace('eye: left', 'eye: right'));
    await editor.until(fu, (checks) => checks.includes('visit-of-other-eye'));
    expect(editor.checks(fu)).toContain('visit-of-other-eye');
  });
});

const at = (uri: string, text: string, word: string) => ({
  textDocument: { uri },
  position: {
    line: text.slice(0, text.indexOf(word)).split('\n').length - 1,
    character:
      text
        .split('\n')
        .find((line) => line.includes(word))!
        .indexOf(word.split(': ')[1] ?? word) + 1,
  },
});

describe('names throughout the set', () => {
  it('lead to what they name', async () => {
    await editor.open(fu, followUp);
    const [target] = await editor.request<Location[]>('textDocument/definition', at(fu, followUp, 'operation: OP-1'));
    expect(target).toMatchObject({ uri: op, range: { start: { line: 3, character: 4 } } });
    await editor.open(op, operation);
    const [lens] = await editor.request<Location[]>('textDocument/definition', at(op, operation, 'model: HX-1'));
    expect(lens).toMatchObject({ uri: `${root}/sideport.yaml`, range: { start: { line: 13, character: 11 } } });
    const links = await editor.request<DocumentLink[]>('textDocument/documentLink', { textDocument: { uri: op } });
    expect(links.map(({ target: to }) => to)).toEqual([
      fu,
      `${root}/sideport.yaml#4,10`,
      `${root}/sideport.yaml#14,12`,
    ]);
  });

  it('are found in every note of the set and in no other set', async () => {
    await editor.open(op, operation);
    const references = await editor.request<Location[]>('textDocument/references', {
      ...at(op, operation, 'ref: S-02'),
      context: { includeDeclaration: true },
    });
    expect(references.map(({ uri }) => uri).toSorted((a, b) => (a < b ? -1 : 1))).toEqual([
      fu,
      op,
      `${root}/sideport.yaml`,
    ]);
  });

  it('are renamed in every file at once', async () => {
    await editor.open(op, operation);
    expect(await editor.request('textDocument/prepareRename', at(op, operation, 'id: OP-1'))).toMatchObject({
      placeholder: 'OP-1',
    });
    const edit = await editor.request<WorkspaceEdit>('textDocument/rename', {
      ...at(op, operation, 'id: OP-1'),
      newName: '0417',
    });
    const texts = Object.fromEntries(
      (edit.documentChanges ?? []).flatMap((change) =>
        'textDocument' in change
          ? [[change.textDocument.uri, applied(stored[change.textDocument.uri] ?? '', change.edits as never)]]
          : [],
      ),
    );
    expect(texts).toEqual({
      [op]: operation.replace('OP-1', '"0417"'),
      [fu]: followUp.replace('OP-1', '"0417"'),
    });
    await expect(
      editor.request('textDocument/rename', { ...at(op, operation, 'id: OP-1'), newName: ' ' }),
    ).rejects.toThrow(/identifier/);
  });

  it('are found as symbols of the workspace', async () => {
    await editor.open(op, operation);
    await setRead(op);
    const found = await editor.request<SymbolInformation[]>('workspace/symbol', { query: 'p-1' });
    expect(found.map(({ name }) => name)).toEqual(['OP-1', 'FU-1']);
    const lenses = await editor.request<SymbolInformation[]>('workspace/symbol', { query: 'hx' });
    expect(lenses.map(({ name, containerName }) => [name, containerName])).toEqual([
      ['HX-1', 'lens of the department'],
    ]);
  });
});

describe('beside the note', () => {
  it('a follow-up file is made under a free name, with the eye left to the examiner', async () => {
    await editor.open(op, operation);
    await setRead(op);
    const position = { line: 3, character: 5 };
    const actions = await editor.request<CodeAction[]>('textDocument/codeAction', {
      textDocument: { uri: op },
      range: { start: position, end: position },
      context: { diagnostics: [] },
    });
    const action = actions.find(({ title }) => title === 'Add the follow-up file');
    expect(action?.edit?.documentChanges?.[0]).toMatchObject({
      kind: 'create',
      uri: `${root}/2031/op.follow-up.opnote.yaml`,
    });
    expect(JSON.stringify(action?.edit)).toContain('operation: OP-1\\ndate: \\npatient:\\n  ref: P-1\\neye: \\n');
  });

  it("a new note begins with the department's usual, marked for confirmation, and without an eye", async () => {
    const answer = await editor.request<{ snippet: string; fileName: string }>('sideport/newNote', {
      folder: `${root}/2031`,
      today: '2031-03-20',
    });
    expect(answer.fileName).toBe('operation-2031-03-20.opnote.yaml');
    expect(answer.snippet).toContain('seat: temporal # confirm');
    expect(answer.snippet).toContain('    - vacuum: 380 mmHg # confirm');
    expect(answer.snippet).toContain('  - what: pressure and wound # confirm');
    expect(answer.snippet).toMatch(/\neye: \$\{\d+\}\n/);
  });
});

describe('a text without a place', () => {
  it('is read and completed all the same', async () => {
    const here = await editor.openAt('untitled:Untitled-1', 'opnote: 1\nrecord: operation\neye: ‸');
    expect(
      (await editor.request<CompletionItem[]>('textDocument/completion', here)).map(({ label }) => label),
    ).toContain('left');
  });
});
