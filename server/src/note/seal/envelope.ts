import * as z from 'zod';
import { canonicalJson } from '../export/json-text.ts';
import { base64, fromBase64, joinBytes, utf8, type Checking, type Hashing, type Signing } from './primitives.ts';
import { statement, type Statement } from './statement.ts';

export const PAYLOAD_TYPE = 'application/vnd.in-toto+json';

/** A DSSE envelope: the signed bytes and who signed them. The key id is a hint for people; nothing is decided by it. */
export const envelope = z.object({
  payload: z.string(),
  payloadType: z.string(),
  signatures: z.array(z.object({ keyid: z.string().optional(), sig: z.string() })).min(1),
});
export type Envelope = z.infer<typeof envelope>;

/** The seals of one note, oldest first, as they stand in the file beside it. */
export const sealFile = z.object({ version: z.literal(1), seals: z.array(envelope).min(1) });
export type SealFile = z.infer<typeof sealFile>;

/** What a signature of DSSE is made over. Source: DSSE protocol 1.0.2, pre-authentication encoding. */
export function preAuthentication(payloadType: string, payload: Uint8Array): Uint8Array {
  const type = utf8(payloadType);
  return joinBytes(utf8(`DSSEv1 ${type.length} `), type, utf8(` ${payload.length} `), payload);
}

export function sealed(about: Statement, keyid: string, { sign }: Signing): Envelope {
  const payload = utf8(canonicalJson(about));
  const signature = sign(preAuthentication(PAYLOAD_TYPE, payload));
  return { payload: base64(payload), payloadType: PAYLOAD_TYPE, signatures: [{ keyid, sig: base64(signature) }] };
}

/** Names an envelope, for the seal that follows it. */
export function envelopeDigest(one: Envelope, { sha256 }: Hashing): string {
  return sha256(utf8(canonicalJson(one)));
}

export type Opened =
  | { readonly ok: true; readonly statement: Statement; readonly key: Uint8Array }
  | { readonly ok: false; readonly because: string };

/**
 * Opens an envelope with one of the known keys. What is read is exactly what was signed: the statement is made from the
 * verified bytes and from nothing else.
 */
export function opened(one: Envelope, keys: readonly Uint8Array[], { isSignature }: Checking): Opened {
  if (one.payloadType !== PAYLOAD_TYPE)
    return { ok: false, because: `it holds something else than a seal (${one.payloadType})` };
  const payload = fromBase64(one.payload);
  if (payload === undefined) return { ok: false, because: 'its content is damaged' };
  const message = preAuthentication(one.payloadType, payload);
  const key = keys.find((candidate) =>
    one.signatures.some(({ sig }) => {
      const signature = fromBase64(sig);
      return signature !== undefined && isSignature(signature, message, candidate);
    }),
  );
  if (key === undefined)
    return {
      ok: false,
      because: 'its signature was made by none of the known signers, or what was signed has been changed',
    };
  const signed = statementIn(payload);
  return signed ? { ok: true, statement: signed, key } : { ok: false, because: 'what was signed is no seal of a note' };
}

/** What an envelope says of itself, whoever signed it: good for finding what belongs together, proof of nothing. */
export function claimOf({ payload }: Envelope): Statement | undefined {
  const bytes = fromBase64(payload);
  return bytes && statementIn(bytes);
}

function statementIn(payload: Uint8Array): Statement | undefined {
  return statement.safeParse(jsonOf(new TextDecoder().decode(payload))).data;
}

export function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}
