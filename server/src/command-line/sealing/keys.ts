import { createHash, createPrivateKey, createPublicKey, sign, verify, type KeyObject } from 'node:crypto';
import { resolve, sep } from 'node:path';
import type { Checking, Signing } from '../../note/seal/primitives.ts';
import { FileProblem, WrongUse, type World } from '../world.ts';

const sha256 = (data: Uint8Array): string => createHash('sha256').update(data).digest('hex');

export const sha512 = (data: Uint8Array): Uint8Array => createHash('sha512').update(data).digest();

/** Ed25519 and SHA-256 of the system's own library. */
export const checking: Checking = {
  sha256,
  isSignature: (signature, message, publicKey) => {
    try {
      const key = createPublicKey({
        key: { kty: 'OKP', crv: 'Ed25519', x: Buffer.from(publicKey).toString('base64url') },
        format: 'jwk',
      });
      return verify(null, message, key, signature);
    } catch {
      return false;
    }
  },
};

/**
 * The private key of a signer, from a PEM file that lies outside the set.
 * @param setFolder the folder of the set whose note is sealed
 */
export function readSigningKey(file: string, setFolder: string, world: World): Signing {
  const path = resolve(world.folder, file);
  if (path.startsWith(setFolder + sep)) {
    throw new WrongUse(`The key ${file} lies among the notes: whoever gets the notes could sign. Keep it elsewhere.`);
  }
  const key = privateKey(file, path, world);
  const { x = '' } = createPublicKey(key).export({ format: 'jwk' });
  return { sha256, sign: (message) => sign(null, message, key), publicKey: Buffer.from(x, 'base64url') };
}

function privateKey(file: string, path: string, world: World): KeyObject {
  const hint = 'It needs an Ed25519 key in PEM form, such as openssl genpkey -algorithm ed25519 gives.';
  let pem: string;
  try {
    pem = world.files.read(path);
  } catch (error) {
    throw error instanceof FileProblem ? new FileProblem(`${file}: ${error.message}.`) : error;
  }
  let key: KeyObject;
  try {
    key = createPrivateKey(pem);
  } catch {
    throw new WrongUse(`${file} is no private key that can be read here. ${hint}`);
  }
  if (key.asymmetricKeyType !== 'ed25519')
    throw new WrongUse(`${file} is a key of another kind (${key.asymmetricKeyType}). ${hint}`);
  return key;
}
