import { mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { asyncBufferFromFile, parquetReadObjects } from 'hyparquet';
import { describe, expect, test } from 'vitest';
import { emptyFolder, exported, exportedAnyway, run, SOUND } from '../export/run.ts';
import { IDENTIFIERS } from './identifiers.ts';

const all = Object.values(IDENTIFIERS);

const place = (name: string) => new RegExp(`^(\\s*(?:- )?${name}:).*$`, 'gmu');

/** A note with every identifier in every place that takes words, in identifiers of its own kind, and in comments. */
function seededNote(): string {
  const sound = readFileSync(join(SOUND, 'long-eye-ring.opnote.yaml'), 'utf8');
  const words = all.join('; ').replaceAll('"', '');
  const prose = `"${words}"`;
  const seeded = [
    'indication',
    'macula',
    'device',
    'drug',
    'findings',
    'condition-at-end',
    'instructions',
    'what',
    'if',
    'then',
    'anticoagulant',
    'grade',
  ].reduce(
    (text, name) =>
      text.replace(place(name), name === 'grade' ? `$1 ${IDENTIFIERS['any other number']}` : `$1 ${prose}`),
    sound,
  );
  return `# ${words}
${seeded
  .replace(/^(date:).*$/mu, '$1 2031-03-14')
  .replace(/^(place:).*$/mu, `$1 ${IDENTIFIERS['town']}`)
  .replace(/^( {2}ref: )P-.*$/mu, `$1${IDENTIFIERS['record number']}`)
  .replace(/^( +ref: )S-02$/mu, `$1${IDENTIFIERS['licence number']}`)
  .replace(/^( {2}lot:).*$/mu, `$1 ${IDENTIFIERS['lot of the lens']}`)
  .replace(/^( {2}serial: )R-.*$/mu, `$1${IDENTIFIERS['serial number of the ring']}`)
  .replace(/^( {2}lot:.*)$/mu, `$1\n  udi: "${IDENTIFIERS['scanned identifier']}"`)
  .replace(/^(seat:.*)$/mu, `$1 # ${words}`)}
free-text: ${prose}
dictation: |
  ${words}
codes:
  - system: local
    code: ${IDENTIFIERS['telephone']}
    reason: ${prose}
`;
}

const amendment = `opnote: 1
record: amendment
status: final
id: AM-${IDENTIFIERS['any other number']}
amends: OP-2031-0417
kind: correction
at: 2031-03-16T08:30+01:00
by: ${IDENTIFIERS['name of the surgeon']}
patient:
  ref: ${IDENTIFIERS['record number']}
eye: left
changes:
  - field: lens.serial
    was: "${IDENTIFIERS['serial number of the lens']}"
    now: "${IDENTIFIERS['health plan number']}"
    reason: "${IDENTIFIERS['name with a title']}"
reason: "${all.join('; ')}"
text: "${all.join('; ')}"
`;

const followUp = `opnote: 1
record: follow-up
status: final
id: FU-${IDENTIFIERS['account number']}
operation: OP-2031-0417
date: 2031-04-11
patient:
  ref: ${IDENTIFIERS['record number']}
eye: left
by: ${IDENTIFIERS['name without a title']}
cornea: "${all.join('; ')}"
treatment: "${all.join('; ')}"
complications: none
`;

function seededSet(): string {
  const folder = join(emptyFolder(), 'quillfeather');
  mkdirSync(folder);
  writeFileSync(join(folder, 'edda-quillfeather.opnote.yaml'), seededNote());
  writeFileSync(join(folder, 'amendment.opnote.yaml'), amendment);
  writeFileSync(join(folder, 'visit.opnote.yaml'), followUp);
  return folder;
}

/** A key that stays the same: pseudonyms made from a new one could spell the digits of a seed by chance. */
function keyFile(): string {
  const path = join(emptyFolder(), 'key');
  writeFileSync(path, '0123456789abcdef0123456789abcdef');
  return path;
}

const NAMES = ['quillfeather', 'velmont', 'edda', 'torvald', '0040719052', '00417723', '09521234543213', '1979'];
const DATES = new Set([seededNote(), amendment, followUp].join('\n').match(/\d{4}-\d{2}-\d{2}/gu));

/** Identifiers, and words of names, that stand in a text as they are, escaped, or turned into base64. */
function survivorsIn(text: string): readonly string[] {
  const folded = text.toLowerCase();
  const parts = [...all, ...NAMES, ...DATES];
  return parts.filter((part) => {
    const forms = [
      part,
      part.replaceAll('/', '\\/'),
      Buffer.from(part).toString('base64').replaceAll('=', ''),
      encodeURIComponent(part),
      Buffer.from(part).toString('hex'),
    ];
    return forms.some((form) => folded.includes(form.toLowerCase()));
  });
}

async function everythingIn(folder: string): Promise<string> {
  const texts = readdirSync(folder).map(async (name) => {
    const path = join(folder, name);
    if (!name.endsWith('.parquet')) return readFileSync(path, 'utf8');
    const rows = await parquetReadObjects({ file: await asyncBufferFromFile(path) });
    return `${readFileSync(path, 'latin1')}${JSON.stringify(rows, (_, value: unknown) => (typeof value === 'bigint' ? String(value) : value))}`;
  });
  return [...(await Promise.all(texts)), ...readdirSync(folder)].join('\n');
}

test('the seeds are there to be found: without taking out, they survive', async () => {
  const { out } = await exportedAnyway(seededSet(), '--as', 'json');
  expect(survivorsIn(out).length).toBeGreaterThan(25);
  expect(Object.keys(IDENTIFIERS).length).toBeGreaterThanOrEqual(30);
});

describe.each(['year', 'days'])('dates by %s', (dates) => {
  const forms = ['json', 'ndjson', 'csv', 'parquet', ...(dates === 'days' ? [] : ['fhir'])];
  test.each(forms)('no seeded identifier survives in %s', async (form) => {
    const folder = emptyFolder();
    const output = form === 'csv' || form === 'parquet' || form === 'fhir' ? folder : join(folder, 'notes.json');
    const { err } = await exportedAnyway(
      seededSet(),
      '--as',
      form,
      '--output',
      output,
      '--deidentify',
      '--dates',
      dates,
      '--codes',
      'icd10cm',
      '--key',
      keyFile(),
    );
    expect(survivorsIn(await everythingIn(folder))).toEqual([]);
    expect(survivorsIn(err)).toEqual([]);
    expect(err).toContain('Left out: ');
  });
});

test('moved dates keep their intervals, and no date stays where it was', async () => {
  const moved = ['--deidentify', '--dates', 'shifted', '--key', keyFile()];
  const { out } = await exportedAnyway(seededSet(), '--as', 'json', ...moved);
  const { records } = JSON.parse(out) as {
    readonly records: readonly { readonly record: string; readonly note: Readonly<Record<string, string>> }[];
  };
  const dateOf = (record: string) => Date.parse(records.find((one) => one.record === record)?.note['date'] ?? '');
  expect((dateOf('follow-up') - dateOf('operation')) / 86_400_000).toBe(28);
  expect(survivorsIn(out)).toEqual([]);
});

/** The pseudonyms of the patients under a key. */
const refs = async (key: string) => {
  const { out } = await exported(SOUND, '--as', 'ndjson', '--deidentify', '--key', key);
  return out.match(/"ref":"P-[0-9a-f]+"/gu);
};

test('one key gives one pseudonym, another key another', async () => {
  const [first, second] = [join(emptyFolder(), 'key'), join(emptyFolder(), 'key')];
  writeFileSync(first, '0123456789abcdef0123456789abcdef');
  writeFileSync(second, 'fedcba9876543210fedcba9876543210');
  expect(await refs(first)).toEqual(await refs(first));
  expect(await refs(first)).not.toEqual(await refs(second));
  // The two eyes of one patient stay together.
  expect(new Set(await refs(first)).size).toBeLessThan((await refs(first))?.length ?? 0);
});

test('an age over 89 is told as 90', async () => {
  const folder = emptyFolder();
  const note = readFileSync(join(SOUND, 'long-eye-ring.opnote.yaml'), 'utf8').replace(
    /^ {2}born:.*$/mu,
    '  born: 1933',
  );
  writeFileSync(join(folder, 'old.opnote.yaml'), note);
  const { out, err } = await exported(folder, '--as', 'csv', '--deidentify');
  const [heading = '', row = ''] = out.split('\r\n');
  expect(row.split(',')[heading.split(',').indexOf('age_years')]).toBe('90');
  expect(err).toContain('Ages over 89 told as 90: age (1).');
});

describe('what the person is told', () => {
  test('a key among the notes is refused', async () => {
    const folder = seededSet();
    writeFileSync(join(folder, 'key'), '0123456789abcdef0123456789abcdef');
    const { code, err } = await run('export', folder, '--deidentify', '--key', join(folder, 'key'));
    expect(code).toBe(2);
    expect(err).toContain('lies among the notes: whoever has both can name every person. Keep it elsewhere.');
  });
  test('a short key is refused', async () => {
    const key = join(emptyFolder(), 'key');
    writeFileSync(key, 'short');
    const { code, err } = await run('export', SOUND, '--deidentify', '--key', key);
    expect(code).toBe(2);
    expect(err).toContain('is too short to keep anyone from guessing it');
  });
  test('text kept at the wish of the person is named', async () => {
    const { err } = await exported(SOUND, '--as', 'ndjson', '--deidentify', '--keep-text');
    expect(err).toContain('Free text kept at your wish: it may name people: ');
  });
  test('FHIR cannot count days', async () => {
    const { code, err } = await run('export', SOUND, '--as', 'fhir', '--deidentify', '--dates', 'days');
    expect(code).toBe(2);
    expect(err).toContain('A FHIR document needs a date');
  });
});

test('names of drugs leave, for without them nothing can be counted', async () => {
  const { out } = await exported(SOUND, '--as', 'ndjson', '--deidentify');
  for (const drug of ['cefuroxime', 'dexamethasone 0.1 %', 'apixaban, not stopped']) expect(out).toContain(`"${drug}"`);
});
