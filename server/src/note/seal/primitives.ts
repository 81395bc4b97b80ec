/** What sealing needs from outside the pure core. Keys and signatures are Ed25519 (RFC 8032), raw bytes. */
export interface Hashing {
  /** SHA-256 in hexadecimal. */
  readonly sha256: (data: Uint8Array) => string;
}

export interface Checking extends Hashing {
  readonly isSignature: (signature: Uint8Array, message: Uint8Array, publicKey: Uint8Array) => boolean;
}

export interface Signing extends Hashing {
  readonly sign: (message: Uint8Array) => Uint8Array;
  readonly publicKey: Uint8Array;
}

export const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

export function base64(bytes: Uint8Array): string {
  return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
}

/** The bytes of a base64 text, or undefined where it is none. */
export function fromBase64(text: string): Uint8Array | undefined {
  try {
    return Uint8Array.from(atob(text), (character) => character.charCodeAt(0));
  } catch {
    return undefined;
  }
}

export function joinBytes(...parts: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}
