import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { amendment, department, folderOf, followUp, operation, tablesOf } from './leaving-notes.ts';
import { emptyFolder, run, runAt, SOUND } from './run.ts';

const FORMS = ['json', 'ndjson', 'csv', 'fhir'];

describe('what could not be read', () => {
  const SLIPS = 'samples/faulty/slips-of-writing.opnote.yaml';
  // Counted by hand in the sample: date, start, urgency, axial length, K1, a misspelt field, contact time, a word where
  // hydrodissection has fields, a regimen, and a field given twice. A time out of its limits was read and leaves.
  test.each(['json', 'ndjson', 'csv'])('%s: the note is named, with the number of places', async (form) => {
    const { code, err, out } = await run('export', SLIPS, '--as', form);
    expect(code).toBe(2);
    expect(err).toContain(`${SLIPS}: 10 places could not be read and are not among what was exported.`);
    expect(out).toContain('OP-2025-0814');
    expect(out).toContain('3500');
  });
  test.each(FORMS)('%s: one place', async (form) => {
    const folder = folderOf({ note: operation('preop:\n  pressure: 16 mm\n') });
    const { code, err } = await run('export', folder, '--as', form);
    expect(code).toBe(2);
    expect(err).toContain('note.opnote.yaml: 1 place could not be read and is not among what was exported.');
  });
  test('a list written as one entry was read', async () => {
    const { table, code } = await tablesOf(
      folderOf({ note: operation('drugs:\n  drug: cefuroxime\n  purpose: antibiotic\n') }),
    );
    expect([code, table('drugs').length]).toEqual([0, 1]);
  });
  test('a field with nothing behind it is no value that was lost', async () =>
    expect((await run('export', folderOf({ note: operation('dye:\n') }))).code).toBe(0));
});

describe('final notes with errors', () => {
  const final = operation('procedure: phacoemulsification with lens\nplan:\n  eye: left\n', {
    status: 'final',
    eye: 'right',
  });
  test.each(FORMS)('%s: they leave, are named, and the exit code says so', async (form) => {
    const { code, err, out } = await run('export', folderOf({ note: final }), '--as', form);
    expect(code).toBe(1);
    expect(out).toContain('OP-1');
    expect(err).toMatch(
      /^Final notes with errors of side, identity, lens or reading, exported as they are written .*note\.opnote\.yaml \(\d+\)\.$/mu,
    );
  });
  test('what could not be read comes first in the exit code', async () =>
    expect((await run('export', folderOf({ note: `${final}urgency: soon\n` }))).code).toBe(2));
  test('a draft may be unfinished', async () =>
    expect(
      (await run('export', folderOf({ note: operation('procedure: phacoemulsification with lens\n') }))).code,
    ).toBe(0));
  test('sound notes are none', async () => {
    const { code, err } = await run('export', SOUND);
    expect([code, err]).toEqual([0, '']);
  });
});

describe('ids', () => {
  const twice = { a: operation('', { eye: 'right' }), b: operation('', { eye: 'left' }) };
  test('two operations of one id are named', async () => {
    const { code, err, table } = await tablesOf(folderOf(twice));
    expect(code).toBe(2);
    expect(err).toMatch(
      /b\.opnote\.yaml: it has the same id as \S*a\.opnote\.yaml\. Rows of the tables are told apart by the id/u,
    );
    expect(table('operations').map((row) => row['eye'])).toEqual(['right', 'left']);
  });
  test('their amendment stands once', async () => {
    const text = amendment('text: both eyes were dilated\n');
    const { table } = await tablesOf(folderOf({ ...twice, am: text }));
    expect(table('amendments').map((row) => row['amendment_id'])).toEqual(['AM-1']);
  });
  test('a note without an id is named', async () => {
    const { code, err } = await tablesOf(folderOf({ note: operation('', { id: '' }) }));
    expect(code).toBe(2);
    expect(err).toContain('note.opnote.yaml: it has no id. Rows of the tables are told apart by the id alone');
  });
  test('a visit may have the id of an operation: they stand in two tables', async () => {
    const { code } = await tablesOf(folderOf({ op: operation(), visit: followUp('', { id: 'OP-1' }) }));
    expect(code).toBe(0);
  });
  test('records that are joined by nothing need none', async () =>
    expect((await run('export', folderOf({ note: operation('', { id: '' }) }), '--as', 'json')).code).toBe(0));
});

describe('amendments in another folder', () => {
  const change = amendment(
    'changes:\n  - field: lens.serial\n    was: "1"\n    now: "2"\n    reason: a slip\n  - field: lens.lot\n    was: A\n    now: B\n    reason: a slip\n',
  );
  const notes = { '2024-01/op': operation('lens:\n  serial: "1"\n'), '2024-02/am': change };
  const rows = (one: Awaited<ReturnType<typeof tablesOf>>) =>
    one.table('amendments').map((row) => [row['note_id'], row['amendment_id'], row['number'], row['now']]);
  const both = [
    ['OP-1', 'AM-1', '1', '2'],
    ['OP-1', 'AM-1', '2', 'B'],
  ];

  test('in one set they stand once, with their operation, and the other folder says so', async () => {
    const folder = folderOf({ sideport: department, ...notes });
    const [january, february] = [await tablesOf(join(folder, '2024-01')), await tablesOf(join(folder, '2024-02'))];
    expect(rows(january)).toEqual(both);
    expect(january.table('operations')[0]?.['amended']).toBe('true');
    expect(rows(february)).toEqual([]);
    expect(february.err).toMatch(
      /^Amendments of notes that are not exported with them; they leave with those: \S*am\.opnote\.yaml\.$/mu,
    );
    expect([january.err, january.code, february.code]).toEqual(['', 0, 0]);
  });
  test('without a set they leave by themselves, and it is said what nobody can know', async () => {
    const folder = folderOf(notes);
    const [january, february] = [await tablesOf(join(folder, '2024-01')), await tablesOf(join(folder, '2024-02'))];
    expect(rows(january)).toEqual([]);
    expect(rows(february)).toEqual(both);
    expect(february.err).toContain('the column “amended” of those notes cannot tell of them');
    expect(february.err).toContain('A sideport.yaml in a folder above both makes one set of them');
  });
  test('all folders at once are the whole', async () => {
    const folder = folderOf({ sideport: department, ...notes });
    const whole = await tablesOf(folder);
    expect([rows(whole), whole.err]).toEqual([both, '']);
  });
  test('an amendment of a visit leaves with it', async () => {
    const ofVisit = amendment('text: the pressure was taken twice\n', { id: 'AA-1', amends: 'FU-1', kind: 'addendum' });
    const { err, table } = await tablesOf(folderOf({ op: operation(), visit: followUp(), am: ofVisit }));
    expect(table('follow-ups')[0]?.['amended']).toBe('true');
    expect(table('operations')[0]?.['amended']).toBe('false');
    expect([table('amendments').map((row) => row['note_id']), err]).toEqual([['FU-1'], '']);
  });
  test('an amendment of an amendment leaves, too', async () => {
    const again = amendment('text: and again\n', { id: 'AM-2', amends: 'AM-1', kind: 'addendum' });
    const { table } = await tablesOf(folderOf({ op: operation(), am: change, again }));
    expect(table('amendments').map((row) => `${row['amendment_id']} of ${row['note_id']}`)).toEqual([
      'AM-1 of OP-1',
      'AM-1 of OP-1',
      'AM-2 of AM-1',
    ]);
  });
  test('no document tells of them', async () => {
    const { err } = await run('export', join(folderOf(notes), '2024-02'), '--as', 'fhir');
    expect(err).toContain('they stand in no document');
  });
  test('the order of the notes is known although the first of them cannot be read', async () => {
    const folder = folderOf({ sideport: department, ...notes });
    writeFileSync(join(folder, '0000.opnote.yaml'), Buffer.from([0xff, 0xfe, 0x41]));
    const { err, table } = await tablesOf(folder);
    expect(err).not.toContain('Amendments of');
    expect(table('operations')).toHaveLength(1);
  });
});

test('where identifiers are taken out no file is named', async () => {
  const folder = join(emptyFolder(), 'quillfeather');
  mkdirSync(folder);
  writeFileSync(join(folder, 'edda.opnote.yaml'), operation('urgency: soon\n', { status: 'final', id: '' }));
  const { code, err } = await tablesOf(folder, '--deidentify');
  expect(code).toBe(2);
  expect(err).toContain(
    'Places of 1 note could not be read and are not among what was exported. sideport check names them.',
  );
  expect(err).toContain('Without an id: 1 note.');
  expect(err).toMatch(/^Final notes with errors.*: 1 note\.$/mu);
  expect(err).not.toMatch(/quillfeather|edda/u);
});

describe('equal notes give equal bytes', () => {
  const reviews = operation('reviews:\n  - what: pressure\n    due: 1 day\n', { date: '2031-01-10' });
  const at = async (moment: string, form: string, ...words: readonly string[]): Promise<string> => {
    const folder = folderOf({ note: reviews });
    const output = emptyFolder();
    if (form === 'csv' || form === 'parquet') {
      await runAt(moment, 'export', folder, '--as', form, '--output', output, ...words);
      return readdirSync(output)
        .toSorted()
        .map((name) => readFileSync(join(output, name), 'latin1'))
        .join('\n');
    }
    return (await runAt(moment, 'export', folder, '--as', form, ...words)).out;
  };
  const [early, late] = ['2031-02-01T08:00:00Z', '2032-06-01T09:30:00Z'];

  test.each(['json', 'ndjson', 'csv', 'parquet'])('%s, whenever it is made', async (form) => {
    const text = await at(early, form);
    expect(await at(late, form)).toBe(text);
    expect(text).not.toContain('overdue-reviews');
  });
  test('fhir says when it was made', async () => {
    expect(JSON.parse(await at(early, 'fhir'))).toMatchObject({ timestamp: '2031-02-01T08:00:00.000Z' });
    expect(await at(late, 'fhir')).not.toBe(await at(early, 'fhir'));
  });
  test.each(['json', 'csv', 'parquet', 'fhir'])('%s as of a day is the same whenever it is made', async (form) => {
    const text = await at(early, form, '--as-of', '2031-05-01');
    expect(await at(late, form, '--as-of', '2031-05-01')).toBe(text);
    expect(text).toContain('overdue-reviews');
    if (form === 'fhir') expect(text).toContain('"timestamp":"2031-05-01T00:00:00Z"');
  });
  test.each(['2031-02-30', 'today', '2031-5-1'])('%s is no day', async (day) => {
    const { code, err } = await run('export', SOUND, '--as-of', day);
    expect(code).toBe(2);
    expect(err).toContain(`--as-of cannot be ${day}. Write a day such as 2031-12-31.`);
  });
});
