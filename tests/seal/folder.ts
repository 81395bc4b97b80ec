import { generateKeyPairSync } from 'node:crypto';
import { copyFileSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { emptyFolder, run as runAt, SOUND } from '../export/run.ts';

// A folder with two notes, a department file and a register of three signers, and their keys in another one.
export const NOTE = 'routine-right.opnote.yaml';
export const TRAINEE = 'capsule-tear-right.opnote.yaml';
export let folder = '';
export let keys = '';

export const path = (name: string) => join(folder, name);
export const key = (signer: string) => join(keys, `${signer}.pem`);
export const run = runAt;
export const seal = async (name: string, signer: string, ...more: readonly string[]) =>
  run('seal', path(name), '--signer', signer, '--key', key(signer), ...more);
export const verify = async (...more: readonly string[]) => run('verify', folder, ...more);
export const findings = (out: string) =>
  (JSON.parse(out) as { notes: readonly { file: string; findings: readonly { finding: string }[] }[] }).notes.flatMap(
    (note) => note.findings.map(({ finding }) => finding),
  );
export const sealsOf = (name: string) =>
  JSON.parse(readFileSync(`${path(name)}.seal.json`, 'utf8')) as {
    version: 1;
    seals: { payload: string; payloadType: string }[];
  };

async function newSigner(signer: string): Promise<string> {
  writeFileSync(key(signer), generateKeyPairSync('ed25519').privateKey.export({ type: 'pkcs8', format: 'pem' }));
  const { out } = await run('seal', '--show-public', '--signer', signer, '--key', key(signer));
  return out;
}

export async function fresh(): Promise<void> {
  folder = emptyFolder();
  keys = emptyFolder();
  for (const name of [NOTE, TRAINEE, 'sideport.yaml']) copyFileSync(join(SOUND, name), path(name));
  const lines = [await newSigner('S-05'), await newSigner('S-02'), await newSigner('S-09')];
  writeFileSync(path('allowed_signers'), lines.join(''));
}

export const register = (): string => readFileSync(path('allowed_signers'), 'utf8');
