import type { NoteReading } from '../reading/note-reading.ts';
import { envelopeDigest, sealed, type Envelope } from './envelope.ts';
import type { Signing } from './primitives.ts';
import { fingerprint } from './signers.ts';
import { contentDigest, type Meaning, type Statement } from './statement.ts';

export interface SealRequest {
  readonly reading: NoteReading;
  /** The file, byte for byte. */
  readonly bytes: Uint8Array;
  readonly signer: string;
  readonly meaning: Meaning;
  /** ISO 8601 with the offset. */
  readonly signedAt: string;
  readonly program: string;
  /** The last seal of this note, or of what it amends. */
  readonly previous: Envelope | undefined;
}

const CARRIAGE_RETURN = 13;
const BYTE_ORDER_MARK = [0xef, 0xbb, 0xbf];

/** Why a file cannot be sealed as it is, or undefined when it can. */
export function unsealable({ reading, bytes }: Pick<SealRequest, 'reading' | 'bytes'>): string | undefined {
  if (reading.kind !== 'operation' && reading.kind !== 'follow-up' && reading.kind !== 'amendment')
    return 'this is not a note';
  if (reading.status !== 'final')
    return `its status is ${reading.status}; only a final note is sealed. Write “status: final” when it is complete`;
  if (reading.note.id === undefined) return 'it has no id, by which amendments could point to it';
  if (BYTE_ORDER_MARK.every((byte, at) => bytes[at] === byte))
    return 'it begins with a byte order mark. Save it as UTF-8 without one';
  if (bytes.includes(CARRIAGE_RETURN))
    return 'its lines end as on Windows, and a version control system may change that unseen. Save it with line ends LF';
  return undefined;
}

/** Seals a note. Tamper-evident, not tamper-proof: whoever has the key can seal anything. */
export function sealNote(request: SealRequest, signing: Signing): Envelope {
  const { reading, bytes, previous } = request;
  const amendment = reading.kind === 'amendment' ? reading.note : undefined;
  const about: Statement = {
    _type: 'https://in-toto.io/Statement/v1',
    subject: [{ name: noteId(reading), digest: { sha256: signing.sha256(bytes) } }],
    predicateType: 'urn:sideport:seal:1',
    predicate: {
      kind: amendment ? (amendment.kind?.value ?? 'addendum') : 'original',
      meaning: request.meaning,
      signer: request.signer,
      signedAt: request.signedAt,
      program: request.program,
      contentDigest: { sha256: contentDigest(reading, signing) ?? '' },
      previousSeal: previous ? { sha256: envelopeDigest(previous, signing) } : null,
      ...(amendment?.reason ? { reason: amendment.reason.value } : {}),
    },
  };
  return sealed(about, fingerprint(signing.publicKey, signing), signing);
}

export function noteId(reading: NoteReading): string {
  return reading.kind === null || reading.kind === 'department' ? '' : (reading.note.id?.value ?? '');
}
