import { execFileSync } from 'node:child_process';
import { generateKeyPairSync } from 'node:crypto';
import { copyFileSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { SOUND } from '../export/run.ts';
import { beforeEach, describe, expect, test } from 'vitest';
import {
  findings,
  fresh,
  folder,
  key,
  keys,
  NOTE,
  path,
  register,
  run,
  seal,
  sealsOf,
  TRAINEE,
  verify,
} from './folder.ts';

beforeEach(fresh);

const AMENDMENT = 'routine-right.amend-1.opnote.yaml';
const amend = async (...more: readonly string[]) =>
  run('amend', path(NOTE), '--by', 'S-05', '--reason', 'read again from the box', ...more);

describe('a sealed note', () => {
  test('holds, and the note itself is not touched', async () => {
    const before = readFileSync(path(NOTE));
    const { code, out, err } = await seal(NOTE, 'S-05');
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(
      /routine-right\.opnote\.yaml is sealed by S-05 as author: .*routine-right\.opnote\.yaml\.seal\.json\n$/u,
    );
    expect(Buffer.compare(readFileSync(path(NOTE)), before)).toBe(0);
    const verified = await verify();
    expect(verified.code).toBe(0);
    expect(verified.out).toMatch(
      /The seal of S-05 as author, 2031-07-01T\d\d:\d\d:00[+-]\d\d:\d\d, holds: the note is as it was signed\.\n2 notes, 1 sealed, 0 seal chains with errors\.\n$/u,
    );
  });

  test.each([
    ['a comment', (text: string) => `# looked at again\n${text}`, 'seal-layout-changed', 0],
    ['blank lines', (text: string) => text.replace('\npatient:', '\n\n\npatient:'), 'seal-layout-changed', 0],
    [
      'a last zero of a decimal',
      (text: string) =>
        text
          .replace(/axial-length: (\d+\.\d)0 mm/u, 'axial-length: $1 mm')
          .replace(/axial-length: (\d+\.\d\d) mm/u, 'axial-length: $10 mm'),
      'seal-content-changed',
      1,
    ],
    ['the side', (text: string) => text.replace('\neye: right', '\neye: left'), 'seal-content-changed', 1],
    ['a second side', (text: string) => `${text}eye: left\n`, 'seal-content-changed', 1],
    [
      'a second power of the lens',
      (text: string) => text.replace(/^( {2}power: \+21\.5 D)$/mu, '$1\n  power: +12.5 D'),
      'seal-content-changed',
      1,
    ],
    [
      'a field that does not exist',
      (text: string) => `${text}complication: posterior capsule rupture\n`,
      'seal-content-changed',
      1,
    ],
    ['a second document', (text: string) => `${text}---\nopnote: 1\neye: left\n`, 'seal-content-changed', 1],
    [
      'an entry that is not understood',
      (text: string) => text.replace(/\[pseudophakia\]/u, '[pseudophakia, rupture]'),
      'seal-content-changed',
      1,
    ],
    ['the id', (text: string) => text.replace(/\nid: .*/u, '\nid: OP-0000'), 'seal-of-another-note', 1],
  ])('%s changed after signing is seen', async (_, change, finding, code) => {
    await seal(NOTE, 'S-05');
    const text = readFileSync(path(NOTE), 'utf8');
    expect(change(text)).not.toBe(text);
    writeFileSync(path(NOTE), change(text));
    const verified = await verify('--format', 'json');
    expect(findings(verified.out)).toEqual([finding]);
    expect(verified.code).toBe(code);
  });

  test.each([
    ['the folder', () => folder],
    ['the note that was amended', () => path(NOTE)],
  ])('removed while its seals stay is seen from %s', async (_, where) => {
    await seal(NOTE, 'S-05');
    await amend('--field', 'closure.pressure-by-touch', '--now', 'firm');
    await seal(AMENDMENT, 'S-05');
    expect((await run('verify', where())).code).toBe(0);
    rmSync(path(AMENDMENT));
    const { code, out } = await run('verify', where());
    expect(code).toBe(1);
    expect(out).toMatch(
      /routine-right\.amend-1\.opnote\.yaml: error: The note is not there, and its seals are \(.*routine-right\.amend-1\.opnote\.yaml\.seal\.json\): it was sealed and then removed or renamed\. Put it back as it was\.\n/u,
    );
  });

  test('removed from a folder that holds no other note is seen', async () => {
    await seal(NOTE, 'S-05');
    for (const name of [NOTE, TRAINEE, 'sideport.yaml']) rmSync(path(name));
    const { code, out } = await verify('--format', 'json');
    expect(findings(out)).toEqual(['seal-note-missing']);
    expect(code).toBe(2);
  });

  test('stock OpenSSH verifies the same note', async () => {
    await seal(NOTE, 'S-05', '--format', 'sshsig');
    const words = [
      '-Y',
      'verify',
      '-f',
      path('allowed_signers'),
      '-I',
      'S-05',
      '-n',
      'opnote-seal',
      '-s',
      `${path(NOTE)}.sig`,
    ];
    expect(execFileSync('ssh-keygen', words, { input: readFileSync(path(NOTE)), encoding: 'utf8' })).toContain(
      'Good "opnote-seal" signature for S-05',
    );
    expect(() => execFileSync('ssh-keygen', words, { input: 'tampered', stdio: 'pipe' })).toThrow('Command failed');
  });

  test('a trainee needs a supervisor', async () => {
    await seal(TRAINEE, 'S-09');
    const alone = await verify();
    expect(alone.code).toBe(1);
    expect(alone.out).toContain('error: The note of S-09 (senior trainee) has no seal of a supervisor yet.');
    await seal(TRAINEE, 'S-02', '--meaning', 'supervisor');
    expect((await verify()).code).toBe(0);
    expect(sealsOf(TRAINEE).seals).toHaveLength(2);
  });
});

describe('what a seal does not accept', () => {
  test.each([
    ['a draft', (text: string) => text.replace('status: final', 'status: draft'), 2, 'only a final note is sealed'],
    ['line ends of Windows', (text: string) => text.replaceAll('\n', '\r\n'), 2, 'its lines end as on Windows'],
    ['a byte order mark', (text: string) => `\ufeff${text}`, 2, 'it begins with a byte order mark'],
    ['a note with errors', (text: string) => text.replace('\neye: right', '\neye: rihgt'), 1, 'sideport check'],
  ])('%s', async (_, change, code, message) => {
    writeFileSync(path(NOTE), change(readFileSync(path(NOTE), 'utf8')));
    const sealed = await seal(NOTE, 'S-05');
    expect(sealed.err).toContain(message);
    expect(sealed.code).toBe(code);
  });
  test('a key among the notes', async () => {
    copyFileSync(key('S-05'), path('key.pem'));
    const { code, err } = await run('seal', path(NOTE), '--signer', 'S-05', '--key', path('key.pem'));
    expect(code).toBe(2);
    expect(err).toContain('lies among the notes: whoever gets the notes could sign. Keep it elsewhere.');
  });
  test('a key of another kind', async () => {
    writeFileSync(
      key('S-05'),
      generateKeyPairSync('ec', { namedCurve: 'P-256' }).privateKey.export({ type: 'pkcs8', format: 'pem' }),
    );
    expect((await seal(NOTE, 'S-05')).err).toContain(
      'is a key of another kind (ec). It needs an Ed25519 key in PEM form',
    );
  });
  test('a key that the register does not list', async () => {
    const { code, err } = await run('seal', path(NOTE), '--signer', 'S-02', '--key', key('S-05'));
    expect(code).toBe(2);
    expect(err).toMatch(
      /The register of signers does not list this key for S-02\. Its line would be:\nS-02 namespaces="opnote-seal" ssh-ed25519 \S+\n/u,
    );
  });
});

describe('a register that changed', () => {
  beforeEach(async () => {
    await seal(NOTE, 'S-05');
  });
  test('a signer nobody knows', async () => {
    writeFileSync(path('allowed_signers'), register().split('\n').slice(1).join('\n'));
    const { code, out } = await verify();
    expect(code).toBe(1);
    expect(out).toContain(
      'A seal does not hold: its signature was made by none of the known signers, or what was signed has been changed.',
    );
  });
  test('a key that was not valid then', async () => {
    writeFileSync(
      path('allowed_signers'),
      register().replaceAll('namespaces="opnote-seal"', 'namespaces="opnote-seal",valid-before="20300101"'),
    );
    expect(findings((await verify('--format', 'json')).out)).toEqual(['seal-key-not-valid-then', 'seal-holds']);
  });
  test('a key that was revoked', async () => {
    writeFileSync(path('revoked_signers'), `ssh-ed25519 ${register().split('\n')[0]?.split(' ').at(-1)}\n`);
    expect(findings((await verify('--format', 'json')).out)).toEqual(['seal-key-revoked', 'seal-holds']);
  });
  test.each([
    ['git only', 'namespaces="git"', 'seal-key-not-for-seals'],
    ['all but seals', 'namespaces="*,!opnote-seal"', 'seal-key-not-for-seals'],
    ['signing other keys', 'cert-authority', 'seal-key-not-for-seals'],
    ['git and seals', 'namespaces="git,opnote-seal"', 'seal-holds'],
    ['seals of an organisation', 'namespaces="opnote-seal@eye.example.org"', 'seal-holds'],
    ['anything by a pattern', 'namespaces="opnote-*"', 'seal-holds'],
  ])('a key that may sign %s', async (_, options, finding) => {
    writeFileSync(path('allowed_signers'), register().replaceAll('namespaces="opnote-seal"', options));
    const { code, out } = await verify('--format', 'json');
    expect(findings(out)[0]).toBe(finding);
    expect(code).toBe(finding === 'seal-holds' ? 0 : 1);
  });
  test('a line without limits lets its key sign seals', async () => {
    writeFileSync(path('allowed_signers'), register().replaceAll('namespaces="opnote-seal" ', ''));
    expect((await verify()).code).toBe(0);
  });
  test('a key of somebody else', async () => {
    writeFileSync(path('allowed_signers'), register().replace('S-05', 'S-77'));
    const { out } = await verify();
    expect(out).toContain('was made with a key of S-77.');
  });
  test('no register at all', async () => {
    const { code, err } = await verify('--register', join(keys, 'none'));
    expect(code).toBe(2);
    expect(err).toContain('there is no such file');
  });
});

const write = (change: (seal: { payload: string; payloadType: string }) => void) => {
  const file = sealsOf(NOTE);
  const [first] = file.seals;
  if (first) change(first);
  writeFileSync(`${path(NOTE)}.seal.json`, JSON.stringify(file));
};

describe('a file of seals that was tampered with', () => {
  beforeEach(async () => {
    await seal(NOTE, 'S-05');
  });
  test.each([
    [
      'its statement',
      (one: { payload: string; payloadType: string }) =>
        (one.payload = Buffer.from(
          Buffer.from(one.payload, 'base64').toString().replace('"author"', '"verifier"'),
        ).toString('base64')),
    ],
    ['its type', (one: { payload: string; payloadType: string }) => (one.payloadType = 'text/plain')],
    ['its encoding', (one: { payload: string; payloadType: string }) => (one.payload = '%%%')],
  ])('%s', async (_, change) => {
    write(change);
    const verified = await verify('--format', 'json');
    expect(findings(verified.out)).toEqual(['seal-not-readable']);
    expect(verified.code).toBe(1);
  });
  test('no JSON any more', async () => {
    writeFileSync(`${path(NOTE)}.seal.json`, '{');
    const { code, err } = await verify();
    expect(code).toBe(2);
    expect(err).toMatch(/routine-right\.opnote\.yaml: the file of seals beside it is damaged\./u);
  });
});

describe('amendments', () => {
  test('a correction is written beside the note, with the old and the new value', async () => {
    const { code, out, err } = await amend('--field', 'closure.pressure-by-touch', '--now', 'firm');
    expect(code).toBe(0);
    expect(out).toMatch(/routine-right\.amend-1\.opnote\.yaml\n$/u);
    expect(err).toContain('Read the amendment, then seal it: sideport seal ');
    const text = readFileSync(path(AMENDMENT), 'utf8');
    expect(text).toContain(
      '  - field: "closure.pressure-by-touch"\n    was: "normal"\n    now: "firm"\n    reason: "read again from the box"\n',
    );
    expect((await run('check', folder, '--fail-on', 'error')).out).not.toContain(AMENDMENT);
  });

  test('the chain of note and amendment holds; a missing link and a fork are seen', async () => {
    await seal(NOTE, 'S-05');
    await amend('--field', 'closure.pressure-by-touch', '--now', 'firm');
    expect((await seal(AMENDMENT, 'S-05')).code).toBe(0);
    expect((await verify()).code).toBe(0);
    const first = readFileSync(`${path(NOTE)}.seal.json`, 'utf8');
    await seal(NOTE, 'S-02', '--meaning', 'verifier');
    expect(findings((await verify('--format', 'json')).out)).toContain('seal-chain-broken');
    writeFileSync(`${path(NOTE)}.seal.json`, first);
    expect((await verify()).code).toBe(0);
    writeFileSync(`${path(NOTE)}.seal.json`, readFileSync(`${path(AMENDMENT)}.seal.json`));
    expect(findings((await verify('--format', 'json')).out)).toContain('seal-of-another-note');
  });

  test('an amendment of a note without a seal is not sealed', async () => {
    await amend('--text', 'the fellow eye was dilated too', '--kind', 'late-entry');
    const { code, err } = await seal(AMENDMENT, 'S-05');
    expect(code).toBe(2);
    expect(err).toContain('has no seal. Seal that note first, or change it itself.');
  });

  test('a second one gets the next number', async () => {
    await amend('--kind', 'addendum', '--text', 'one');
    const { out } = await amend('--kind', 'addendum', '--text', 'two');
    expect(out).toMatch(/routine-right\.amend-2\.opnote\.yaml\n$/u);
    expect(readFileSync(path('routine-right.amend-2.opnote.yaml'), 'utf8')).toMatch(/^id: "OP-\d{4}-0102-A2"$/mu);
  });

  test.each([
    [['--field', 'lens.seral', '--now', '1'], 'there is no field lens.seral'],
    [['--field', 'lens', '--now', '1'], 'lens is a group of fields'],
    [['--field', 'lens.power', '--now', 'strong'], '“strong” is not understood'],
    [['--field', 'eye', '--now', 'lft'], '“lft” is not a known side'],
    [
      ['--field', 'closure.pressure-by-touch', '--now', 'Normal'],
      'the note says “normal” already, so that nothing would change',
    ],
    [
      ['--text', 'one'],
      'A correction names the field that was wrong: --field FIELD --now VALUE. Words alone are new: --kind addendum',
    ],
    [['--kind', 'addendum', '--text', 'one', '--by', 'S-99'], '--by S-99 is neither in the list of staff ('],
    [['--field', 'pressure', '--now', '14 mmHg'], 'there is no field pressure'],
    [['--field', 'lens.serial'], 'A field and its new value go together'],
    [[], 'Say what is amended'],
  ])('%j is refused with a reason', async (words, message) => {
    const { code, err } = await amend(...words);
    expect(code).toBe(2);
    expect(err).toContain(message);
  });

  test('a visit is amended like an operation, checked, shown and sealed with its amendment', async () => {
    const visit = 'routine-right-month-1.opnote.yaml';
    copyFileSync(join(SOUND, visit), path(visit));
    expect((await seal(visit, 'S-05')).code).toBe(0);
    const written = await run(
      'amend',
      path(visit),
      '--by',
      'S-05',
      '--reason',
      'read again',
      '--field',
      'pressure',
      '--now',
      '24 mmHg',
    );
    expect(written).toMatchObject({
      code: 0,
      out: expect.stringMatching(/routine-right-month-1\.amend-1\.opnote\.yaml\n$/u),
    });
    const amendment = 'routine-right-month-1.amend-1.opnote.yaml';
    expect(readFileSync(path(amendment), 'utf8')).toContain(
      '  - field: "pressure"\n    was: "14 mmHg"\n    now: "24 mmHg"\n',
    );
    expect(await run('check', path(amendment))).toMatchObject({ code: 0, out: '' });
    expect((await seal(amendment, 'S-05')).code).toBe(0);
    expect((await verify()).code).toBe(0);
    const out = (await run('show', path(visit))).out.replaceAll(/\s+/gu, ' ');
    expect(out).toContain('This note has been amended. The text is the original; the amendments stand at the end.');
    expect(out).toContain('Intraocular pressure: was “14 mmHg”, now reads “24 mmHg” (read again).');
  });

  test('a draft is changed, not amended', async () => {
    writeFileSync(path(NOTE), readFileSync(path(NOTE), 'utf8').replace('status: final', 'status: draft'));
    expect((await amend('--kind', 'addendum', '--text', 'x')).err).toContain(
      'is not final (status: draft): change the note itself.',
    );
  });
});
