import { base64, fromBase64, joinBytes, utf8, type Signing } from './primitives.ts';
import { sshKey, sshString } from './signers.ts';

const LINE = 70;
const NOTHING = new Uint8Array();
const HASH = utf8('sha512');

/**
 * A detached signature that stock OpenSSH verifies: ssh-keygen -Y verify -n NAMESPACE.
 * Source: OpenSSH, PROTOCOL.sshsig.
 * @param sha512 SHA-512 of the signed file, raw
 */
export function sshSignature(
  sha512: Uint8Array,
  namespace: string,
  { sign, publicKey }: Pick<Signing, 'sign' | 'publicKey'>,
): string {
  const name = sshString(utf8(namespace));
  const toSign = joinBytes(utf8('SSHSIG'), name, sshString(NOTHING), sshString(HASH), sshString(sha512));
  const signature = joinBytes(sshString(utf8('ssh-ed25519')), sshString(sign(toSign)));
  const version = Uint8Array.of(0, 0, 0, 1);
  const key = fromBase64(sshKey(publicKey)) ?? NOTHING;
  const blob = joinBytes(
    utf8('SSHSIG'),
    version,
    sshString(key),
    name,
    sshString(NOTHING),
    sshString(HASH),
    sshString(signature),
  );
  const lines = base64(blob).match(new RegExp(`.{1,${LINE}}`, 'gu')) ?? [];
  return `-----BEGIN SSH SIGNATURE-----\n${lines.join('\n')}\n-----END SSH SIGNATURE-----\n`;
}
