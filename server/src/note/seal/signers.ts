import { base64, fromBase64, joinBytes, utf8, type Hashing } from './primitives.ts';

/** What seals are signed for, as OpenSSH tells purposes apart; an organisation may add its own name behind an @. */
export const NAMESPACE = 'opnote-seal';

/** One line of a register of signers: who may sign what with which key, and from when to when. */
export interface Signer {
  /** Staff references. */
  readonly names: readonly string[];
  readonly key: Uint8Array;
  /** Whether the line lets the key sign seals: it may be for something else, such as commits. */
  readonly forSeals: boolean;
  /** Moments in milliseconds; open where the line does not say. */
  readonly validAfter?: number;
  readonly validBefore?: number;
}

const KEY_TYPE = 'ssh-ed25519';

/** A public key in the form of OpenSSH: its type and itself, each with its length before it. */
export function sshKey(publicKey: Uint8Array): string {
  return base64(joinBytes(sshString(utf8(KEY_TYPE)), sshString(publicKey)));
}

/** A string of the SSH protocol. Source: RFC 4251, section 5. */
export function sshString(bytes: Uint8Array): Uint8Array {
  const length = new Uint8Array(4);
  new DataView(length.buffer).setUint32(0, bytes.length);
  return joinBytes(length, bytes);
}

/** How OpenSSH names a key: `SHA256:` and the digest in base64. */
export function fingerprint(publicKey: Uint8Array, { sha256 }: Hashing): string {
  const blob = fromBase64(sshKey(publicKey)) ?? new Uint8Array();
  const bytes = Uint8Array.from(sha256(blob).match(/../gu) ?? [], (pair) => Number.parseInt(pair, 16));
  return `SHA256:${base64(bytes).replace(/=+$/u, '')}`;
}

/**
 * Reads a register of signers in the form of OpenSSH's allowed_signers, so that ssh-keygen can use the same file.
 * @returns the signers, and the lines that could not be read, from 1
 */
export function readSigners(text: string): { readonly signers: readonly Signer[]; readonly unread: readonly number[] } {
  const signers: Signer[] = [];
  const unread: number[] = [];
  for (const [index, line] of text.split(/\r?\n/u).entries()) {
    if (line.trim() === '' || line.startsWith('#')) continue;
    const found = /^(\S+)\s+(?:(.*?)\s+)?ssh-ed25519\s+(\S+)/u.exec(line);
    const key = found?.[3] === undefined ? undefined : rawKey(found[3]);
    if (!found || key === undefined) unread.push(index + 1);
    else {
      const options = found[2] ?? '';
      const [validAfter, validBefore] = ['valid-after', 'valid-before'].map((name) => momentOf(options, name));
      signers.push({
        names: (found[1] ?? '').split(','),
        key,
        forSeals: isForSeals(options),
        ...(validAfter === undefined ? {} : { validAfter }),
        ...(validBefore === undefined ? {} : { validBefore }),
      });
    }
  }
  return { signers, unread };
}

/** Reads a list of keys that were revoked, one a line as in a public key file. */
export function readRevoked(text: string): readonly Uint8Array[] {
  return text.split(/\r?\n/u).flatMap((line) => {
    const key = rawKey(/ssh-ed25519\s+(\S+)/u.exec(line)?.[1] ?? '');
    return key === undefined ? [] : [key];
  });
}

function rawKey(encoded: string): Uint8Array | undefined {
  const blob = fromBase64(encoded);
  const head = joinBytes(sshString(utf8(KEY_TYPE)), Uint8Array.of(0, 0, 0, 32));
  if (blob === undefined || blob.length !== head.length + 32 || head.some((byte, at) => blob[at] !== byte))
    return undefined;
  return blob.slice(head.length);
}

/**
 * Whether a line without limits, or one of its namespaces, covers seals; the key of an authority signs other keys only.
 * Source: ssh-keygen(1), ALLOWED SIGNERS; ssh_config(5), PATTERNS.
 */
function isForSeals(options: string): boolean {
  if (/(?:^|,)cert-authority(?:,|$)/iu.test(options)) return false;
  const listed = /(?:^|,)namespaces="([^"]*)"/iu.exec(options)?.[1]?.split(',');
  if (listed === undefined) return true;
  const refused = listed.filter((one) => one.startsWith('!')).map((one) => one.slice(1));
  return !refused.some(coversSeals) && listed.some((one) => coversSeals(one) || one.startsWith(`${NAMESPACE}@`));
}

function coversSeals(pattern: string): boolean {
  const escaped = pattern.replaceAll(/[.+^${}()|[\]\\]/gu, String.raw`\$&`);
  return new RegExp(`^${escaped.replaceAll('*', '.*').replaceAll('?', '.')}$`, 'u').test(NAMESPACE);
}

/** OpenSSH writes 20310314, 20310314100200 or either with Z; without Z it is the time of the machine, here taken as UTC. */
function momentOf(options: string, name: string): number | undefined {
  const [, y, m, d, h = '00', min = '00', s = '00'] =
    new RegExp(`${name}="?(\\d{4})(\\d{2})(\\d{2})(?:(\\d{2})(\\d{2})(\\d{2})?)?Z?"?`, 'u').exec(options) ?? [];
  return y === undefined ? undefined : Date.parse(`${y}-${m}-${d}T${h}:${min}:${s}Z`);
}

export const sameKey = (a: Uint8Array, b: Uint8Array): boolean =>
  a.length === b.length && a.every((byte, at) => byte === b[at]);
