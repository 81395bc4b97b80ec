import { afterEach, describe, expect, it } from 'vitest';
import type { Location, SymbolInformation } from 'vscode-languageserver';
import { TestEditor, turns } from './editor.ts';
import { MemoryFiles } from './memory-files.ts';

// The rule of the protocol (3.17, textDocument/didClose): once a document is closed, its truth is what is stored.

const root = 'file:///theatre/set';
const [department, op, fu] = ['sideport.yaml', 'op.opnote.yaml', 'fu.opnote.yaml'].map((name) => `${root}/${name}`) as [
  string,
  string,
  string,
];
const powers = (to: string) => `sideport: 1
lenses:
  - maker: Halden Optics
    model: HX-1
    powers:
      from: -10.0 D
      to: ${to}
      step: 0.5 D
`;
const operation = `opnote: 1
record: operation
status: draft
id: OP-1
date: 2031-03-14
patient:
  ref: P-1
eye: left
lens:
  maker: Halden Optics
  model: HX-1
  power: +21.0 D
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
lens:
  power: +21.0 D
`;

let editor: TestEditor;
let files: MemoryFiles;
afterEach(() => editor.stop());

async function start(content: Readonly<Record<string, string | null>>, reachesAbove = true): Promise<void> {
  files = new MemoryFiles(content, reachesAbove);
  editor = await TestEditor.inProcess({ files, folders: [root] });
}

const whole = { [department]: powers('+30.0 D'), [op]: operation, [fu]: followUp };
const has = (check: string) => (checks: readonly unknown[]) => checks.includes(check);
const lacks = (check: string) => (checks: readonly unknown[]) => !checks.includes(check);

describe('a note that is closed', () => {
  it('without being saved is known to the others as it is stored', async () => {
    await start(whole);
    await editor.open(fu, followUp);
    await editor.open(op, operation);
    await editor.edit(op, operation.replace('OP-1', 'OP-2'));
    await editor.until(fu, has('operation-not-found'));
    await editor.close(op);
    await expect(editor.until(fu, lacks('operation-not-found'))).resolves.toBeUndefined();
  });

  it('without being saved has said nothing that is no fact either', async () => {
    await start(whole);
    await editor.open(fu, followUp);
    await editor.open(op, operation);
    await editor.edit(op, operation.replace('+21.0', '+22.0'));
    await editor.until(fu, has('visit-reports-other-lens'));
    await editor.close(op);
    await expect(editor.until(fu, lacks('visit-reports-other-lens'))).resolves.toBeUndefined();
  });

  it('after it was saved is known as it was saved, though no file was reported', async () => {
    await start(whole);
    await editor.open(fu, followUp);
    await editor.open(op, operation);
    const other = operation.replace('+21.0', '+22.0');
    await editor.edit(op, other);
    files.content.set(op, other);
    await editor.save(op);
    await editor.close(op);
    await turns(30);
    await editor.edit(fu, `${followUp}\n`);
    expect(editor.checks(fu)).toContain('visit-reports-other-lens');
  });

  it('and was saved right behind a change has told the others of the change', async () => {
    await start(whole);
    await editor.open(fu, followUp);
    await editor.open(op, operation);
    await turns(30);
    await editor.type(op, operation.replace('+21.0', '+22.0'));
    await editor.save(op);
    await expect(editor.until(fu, has('visit-reports-other-lens'))).resolves.toBeUndefined();
  });

  it('counts as it was saved even before it is read again', async () => {
    await start(whole);
    await editor.open(fu, followUp);
    await editor.open(op, operation);
    const other = operation.replace('+21.0', '+22.0');
    await editor.edit(op, other);
    await editor.save(op);
    files.wait = () => new Promise(() => undefined);
    await editor.close(op);
    await editor.edit(fu, `${followUp}\n`);
    expect(editor.checks(fu)).toContain('visit-reports-other-lens');
    expect(editor.initialized.capabilities.textDocumentSync).toMatchObject({ save: true });
  });

  it('and was never stored is gone', async () => {
    await start({ [department]: powers('+30.0 D'), [fu]: followUp });
    await editor.open(fu, followUp);
    await editor.until(fu, has('operation-not-found'));
    await editor.open(op, operation);
    await editor.until(fu, lacks('operation-not-found'));
    await editor.close(op);
    await expect(editor.until(fu, has('operation-not-found'))).resolves.toBeUndefined();
  });
});

describe('a closed note that is written to by something else', () => {
  it('is read again in full, though its facts are the same', async () => {
    await start(whole);
    await editor.open(fu, followUp);
    await editor.until(fu, lacks('operation-not-found'));
    await turns(30);
    files.content.set(op, operation.replace('+21.0', '+22.0'));
    await editor.filesChanged(op);
    await expect(editor.until(fu, has('visit-reports-other-lens'))).resolves.toBeUndefined();
  });

  it('is no note of a set above the one it belongs to', async () => {
    const inner = `${root}/inner/op.opnote.yaml`;
    await start({ ...whole, [`${root}/inner/sideport.yaml`]: 'sideport: 1\n', [inner]: operation });
    await editor.open(op, operation);
    await editor.filesChanged(inner, `${root}/node_modules/a.opnote.yaml`);
    await turns(30);
    await editor.edit(op, `${operation}\n`);
    expect(editor.checks(op)).not.toContain('id-used-twice');
  });
});

describe('a department file', () => {
  it('that is closed without being saved says what is stored', async () => {
    await start(whole);
    await editor.open(op, operation);
    await editor.open(department, powers('+30.0 D'), 'opnote-department');
    await editor.edit(department, powers('+20.0 D'));
    await editor.until(op, has('power-not-made'));
    await editor.close(department);
    await expect(editor.until(op, lacks('power-not-made'))).resolves.toBeUndefined();
  });

  it('that is deleted while it is open is gone when it is closed', async () => {
    await start({ ...whole, [department]: powers('+20.0 D') });
    await editor.open(op, operation);
    await editor.until(op, has('power-not-made'));
    await editor.open(department, powers('+20.0 D'), 'opnote-department');
    files.content.delete(department);
    await editor.filesChanged(department);
    await turns(30);
    expect(editor.checks(op)).toContain('power-not-made');
    await editor.close(department);
    await expect(editor.until(op, lacks('power-not-made'))).resolves.toBeUndefined();
  });

  it('that is new counts for the notes beside it once it is saved', async () => {
    await start({ [op]: operation });
    await editor.open(op, operation);
    await editor.open(department, powers('+20.0 D'), 'opnote-department');
    files.content.set(department, powers('+20.0 D'));
    await editor.save(department);
    await expect(editor.until(op, has('power-not-made'))).resolves.toBeUndefined();
  });

  it('of another name counts for no note', async () => {
    await start(whole);
    await editor.open(op, operation);
    await editor.open(`${root}/other.yaml`, powers('+20.0 D'), 'opnote-department');
    await turns(30);
    await editor.edit(op, `${operation}\n`);
    expect(editor.checks(op)).not.toContain('power-not-made');
  });
});

describe('answers that come late', () => {
  it('are not taken for a file that was read again meanwhile', async () => {
    await start({ ...whole, [op]: operation.replace('OP-1', 'OP-0') });
    let answerFirst: (() => void) | undefined;
    files.wait = (uri) => (uri === op ? new Promise<void>((done) => (answerFirst = done)) : Promise.resolve());
    await editor.open(fu, followUp);
    await expect.poll(() => answerFirst).toBeDefined();
    files.wait = () => Promise.resolve();
    files.content.set(op, operation);
    await editor.filesChanged(op);
    await turns(30);
    answerFirst?.();
    await turns(30);
    await editor.edit(fu, `${followUp}\n`);
    expect(editor.checks(fu)).not.toContain('operation-not-found');
  });

  it('are not taken for a set whose department file changed while it was found', async () => {
    await start({ ...whole, [department]: powers('+20.0 D') });
    const answers: (() => void)[] = [];
    files.wait = (uri) => (uri === department ? new Promise<void>((done) => answers.push(done)) : Promise.resolve());
    await editor.open(op, operation);
    await expect.poll(() => answers).toHaveLength(1);
    files.content.set(department, powers('+30.0 D'));
    await editor.filesChanged(department);
    await expect.poll(() => answers).toHaveLength(2);
    for (let given = 0; given < answers.length; given++) {
      answers[given]?.();
      await turns(30);
    }
    files.wait = () => Promise.resolve();
    await editor.edit(op, `${operation}\n`);
    expect(editor.checks(op)).not.toContain('power-not-made');
    expect(await editor.request<SymbolInformation[]>('workspace/symbol', { query: 'hx' })).toHaveLength(1);
  });
  it('keep a question waiting until the set is found that there is now', async () => {
    await start({ [op]: operation });
    let answer: (() => void) | undefined;
    files.wait = (uri) => (uri === op ? new Promise<void>((done) => (answer = done)) : Promise.resolve());
    await editor.open(op, operation);
    await expect.poll(() => answer).toBeDefined();
    const asked = editor.request<Location[]>('textDocument/references', {
      textDocument: { uri: op },
      position: editor.position(op, operation.indexOf('HX-1')),
      context: { includeDeclaration: true },
    });
    files.wait = () => Promise.resolve();
    files.content.set(department, powers('+30.0 D'));
    await editor.filesChanged(department);
    await turns(30);
    answer?.();
    expect((await asked).map(({ uri }) => uri)).toEqual([op, department]);
  });
});

describe('files that cannot be reached', () => {
  it('are asked for again with the next question, and no word of them is logged', async () => {
    await start(whole);
    files.wait = () => Promise.reject(new Error('P-1 is away'));
    await editor.open(fu, followUp.replace('eye: left', 'eye: right'));
    await turns(30);
    expect(editor.checks(fu)).not.toContain('visit-of-other-eye');
    expect(editor.logged[0]).toMatch(/^finding the set of a note failed: Error/u);
    expect(editor.logged.join('\n')).not.toContain('P-1');
    files.wait = () => Promise.resolve();
    await editor.edit(fu, `${followUp.replace('eye: left', 'eye: right')}\n`);
    await expect(editor.until(fu, has('visit-of-other-eye'))).resolves.toBeUndefined();
  });

  it('are asked for again when only some could be had', async () => {
    await start(whole);
    files.wait = (uri) => (uri === op ? Promise.reject(new Error('away')) : Promise.resolve());
    const other = followUp.replace('eye: left', 'eye: right');
    await editor.open(fu, other);
    await turns(30);
    files.wait = () => Promise.resolve();
    await editor.edit(fu, `${other}\n`);
    await expect(editor.until(fu, has('visit-of-other-eye'))).resolves.toBeUndefined();
  });

  it('keep a set as it was when they cannot be read again', async () => {
    await start(whole);
    await editor.open(fu, followUp);
    await turns(30);
    files.wait = () => Promise.reject(new Error('P-1 is away'));
    await editor.filesChanged(op, department);
    await turns(30);
    await editor.edit(fu, followUp.replace('eye: left', 'eye: right'));
    expect(editor.checks(fu)).toContain('visit-of-other-eye');
    expect(editor.logged[0]).toMatch(/^reading changed files failed/u);
  });
});

describe('the folder of a set', () => {
  const above = 'file:///theatre/sideport.yaml';
  const elsewhere = 'file:///theatre/2030/a/b/c/d/e/f/g/h/i/j/k/l/m/op.opnote.yaml';

  it('is found above the folder that is open, and reaches down however deep, as on the command line', async () => {
    await start({ [above]: 'sideport: 1\n', [elsewhere]: operation.replace('eye: left', 'eye: right') });
    await editor.open(fu, followUp);
    await expect(editor.until(fu, has('visit-of-other-eye'))).resolves.toBeUndefined();
  });

  it('is at most the folder that is open where nothing above can be read', async () => {
    await start({ [above]: 'sideport: 1\n', [elsewhere]: operation }, false);
    await editor.open(`${root}/2031/fu.opnote.yaml`, followUp);
    await turns(30);
    await editor.edit(`${root}/2031/fu.opnote.yaml`, `${followUp}\n`);
    expect(editor.checks(`${root}/2031/fu.opnote.yaml`)).toContain('operation-not-found');
  });

  it('is known to notes in further folders of it as soon as it is found', async () => {
    await start({ ...whole, [`${root}/2031/fu.opnote.yaml`]: followUp });
    await editor.open(op, operation);
    await turns(30);
    await editor.open(`${root}/2031/fu.opnote.yaml`, followUp.replace('eye: left', 'eye: right'));
    await expect(editor.until(`${root}/2031/fu.opnote.yaml`, has('visit-of-other-eye'))).resolves.toBeUndefined();
  });

  it('is not taken for one whose name only begins with the same letters', async () => {
    const beside = `${root}-old/op.opnote.yaml`;
    await start({ ...whole, [beside]: operation });
    await editor.open(op, operation);
    await turns(30);
    await editor.filesChanged(beside);
    await turns(30);
    await editor.edit(op, `${operation}\n`);
    expect(editor.checks(op)).not.toContain('id-used-twice');
  });

  it('keeps its department file though that is no text', async () => {
    await start({ [above]: powers('+20.0 D'), [department]: null, [op]: operation });
    await editor.open(op, operation);
    await turns(30);
    await editor.edit(op, `${operation}\n`);
    expect(editor.checks(op)).not.toContain('power-not-made');
  });

  it('is one folder however its address is escaped', async () => {
    const name = 'theatre%20set';
    await start({ [`file:///${name}/fu.opnote.yaml`]: followUp, [`file:///${name}/op%20%231.opnote.yaml`]: operation });
    const open = 'file:///theatre set/op #1.opnote.yaml';
    await editor.open(open, operation);
    await editor.open(`file:///${name}/fu.opnote.yaml`, followUp);
    await turns(30);
    const changed = editor.until(`file:///${name}/fu.opnote.yaml`, has('visit-of-other-eye'));
    await editor.edit(open, operation.replace('eye: left', 'eye: right'));
    await changed;
    expect(editor.checks(open)).not.toContain('id-used-twice');
  });
});
