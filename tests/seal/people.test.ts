import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { beforeEach, describe, expect, test } from 'vitest';
import { findings, fresh, NOTE, path, register, seal, sealsOf, TRAINEE, verify } from './folder.ts';

// Who may seal what. RCS Good Surgical Practice 2014, 1.3 (signature, named senior surgeon), asks that the author signs.
beforeEach(fresh);

const edit = (name: string, change: (text: string) => string) => {
  const text = readFileSync(path(name), 'utf8');
  const changed = change(text);
  expect(changed).not.toBe(text);
  writeFileSync(path(name), changed);
};
const mayNotSign = (ref: string) =>
  edit('sideport.yaml', (text) =>
    text.replace(new RegExp(`(- ref: ${ref}\\n(?: {4}.*\\n)*? {4}may-sign: )yes`, 'u'), '$1no'),
  );
const isUnsealed = (name: string) => expect(() => sealsOf(name)).toThrow('no such file');

describe('sealing is refused', () => {
  test('as author to somebody whom the note does not name as one', async () => {
    const { code, err } = await seal(NOTE, 'S-02');
    expect(code).toBe(2);
    expect(err).toMatch(
      /was not sealed\. The seal of S-02 as author, \S+, is not of an author of this note: it is signed by S-05\. Who only read it seals as supervisor or verifier\.\n/u,
    );
    isUnsealed(NOTE);
  });
  test.each(['supervisor', 'verifier'])('as %s before the author', async (meaning) => {
    const { code, err } = await seal(TRAINEE, 'S-02', '--meaning', meaning);
    expect(code).toBe(2);
    expect(err).toContain('capsule-tear-right.opnote.yaml was not sealed. The author seals first, and has not yet.\n');
    isUnsealed(TRAINEE);
  });
  test('as supervisor to the trainee who wrote it', async () => {
    await seal(TRAINEE, 'S-09');
    const { code, err } = await seal(TRAINEE, 'S-09', '--meaning', 'supervisor');
    expect(code).toBe(2);
    expect(err).toContain(
      'The note of S-09 (senior trainee) has no seal of a supervisor yet: S-09 sealed it as one and is a trainee.',
    );
    expect(sealsOf(TRAINEE).seals).toHaveLength(1);
  });
  test('as supervisor to somebody who may not sign', async () => {
    mayNotSign('S-02');
    await seal(NOTE, 'S-05');
    const { code, err } = await seal(NOTE, 'S-02', '--meaning', 'supervisor');
    expect(code).toBe(2);
    expect(err).toContain(
      'is of somebody who may not sign notes, as the department lists it today. Have it sealed by somebody who may.',
    );
    expect(sealsOf(NOTE).seals).toHaveLength(1);
  });
  test.each([
    [
      'is for something else',
      () => edit('allowed_signers', (text) => text.replaceAll('opnote-seal', 'git')),
      'for other purposes only',
    ],
    [
      'is no longer valid',
      () =>
        edit('allowed_signers', (text) => text.replaceAll('"opnote-seal"', '"opnote-seal",valid-before="20300101"')),
      'did not allow at that time',
    ],
    [
      'is revoked',
      () => writeFileSync(path('revoked_signers'), `ssh-ed25519 ${register().split('\n')[0]?.split(' ').at(-1)}\n`),
      'a key that is revoked now',
    ],
  ])('with a key that %s', async (_, change, message) => {
    change();
    const { code, err } = await seal(NOTE, 'S-05');
    expect(code).toBe(2);
    expect(err).toContain(message);
    isUnsealed(NOTE);
  });
});

describe('what is still to be done is said when a note is sealed', () => {
  test('the supervisor of a trainee', async () => {
    const { code, err } = await seal(TRAINEE, 'S-09');
    expect(code).toBe(0);
    expect(err).toContain('The note of S-09 (senior trainee) has no seal of a supervisor yet.');
  });
  test('the supervisor of somebody who may not sign alone; after it nothing is said any more', async () => {
    rmSync(path(NOTE));
    mayNotSign('S-09');
    edit(TRAINEE, (text) => text.replace('grade: senior trainee', 'grade: fellow'));
    const { code, err } = await seal(TRAINEE, 'S-09');
    expect(code).toBe(0);
    expect(err).toContain(
      'is of somebody who may not sign notes alone, as the department lists it today. A supervisor has to seal as well.',
    );
    expect(findings((await verify('--format', 'json')).out)).toEqual(['seal-holds', 'seal-signer-may-not-sign']);
    expect(await seal(TRAINEE, 'S-02', '--meaning', 'supervisor')).toMatchObject({ code: 0, err: '' });
    expect(findings((await verify('--format', 'json')).out)).toEqual(['seal-holds', 'seal-holds']);
  });
});

describe('seals of the wrong people are seen', () => {
  // What was sealed while the note or the list of staff said something else.
  test('a supervisor’s without the author’s', async () => {
    rmSync(path(TRAINEE));
    await seal(NOTE, 'S-05');
    await seal(NOTE, 'S-02', '--meaning', 'supervisor');
    const file = sealsOf(NOTE);
    writeFileSync(`${path(NOTE)}.seal.json`, JSON.stringify({ ...file, seals: file.seals.slice(1) }));
    const { code, out } = await verify('--format', 'json');
    expect(findings(out)).toEqual(['seal-chain-broken', 'seal-holds', 'seal-author-missing']);
    expect(code).toBe(1);
  });
  test('one of a person who may not sign any more is a warning: the list says what holds today', async () => {
    rmSync(path(TRAINEE));
    await seal(NOTE, 'S-05');
    await seal(NOTE, 'S-02', '--meaning', 'verifier');
    mayNotSign('S-02');
    const { code, out } = await verify('--format', 'json');
    expect(findings(out)).toEqual(['seal-holds', 'seal-holds', 'seal-signer-may-not-sign']);
    expect(code).toBe(0);
  });
  test('a trainee does not supervise another one', async () => {
    rmSync(path(NOTE));
    await seal(TRAINEE, 'S-09');
    edit(TRAINEE, (text) => text.replace('grade: consultant', 'grade: trainee'));
    expect((await seal(TRAINEE, 'S-02', '--meaning', 'supervisor')).code).toBe(2);
    expect(sealsOf(TRAINEE).seals).toHaveLength(1);
  });
});
