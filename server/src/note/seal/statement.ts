import { recordPlan } from '@sideport/schemas';
import * as z from 'zod';
import { canonicalJson } from '../export/json-text.ts';
import { plainNote } from '../export/plain-note.ts';
import type { NoteReading } from '../reading/note-reading.ts';
import { utf8, type Hashing } from './primitives.ts';

/** In which meaning a note is signed. Source: 21 CFR 11.50 (a signature shows its meaning). */
export const MEANINGS = ['author', 'supervisor', 'verifier'] as const;
export type Meaning = (typeof MEANINGS)[number];

const digest = z.strictObject({ sha256: z.string().regex(/^[0-9a-f]{64}$/u) });

/** What is signed: an in-toto Statement, version 1, about the exact bytes of a note. */
export const statement = z.object({
  _type: z.literal('https://in-toto.io/Statement/v1'),
  subject: z.tuple([z.object({ name: z.string(), digest })]),
  predicateType: z.literal('urn:sideport:seal:1'),
  predicate: z.object({
    kind: z.enum(['original', 'addendum', 'correction', 'late entry']),
    meaning: z.enum(MEANINGS),
    signer: z.string().min(1),
    /** ISO 8601 with the offset: the signer's own claim. */
    signedAt: z.string(),
    program: z.string(),
    /** Digest of the content in canonical form, so that a note that was only laid out anew can be told. */
    contentDigest: digest,
    /** Digest of the seal before this one, or null for the first. */
    previousSeal: digest.nullable(),
    reason: z.string().optional(),
  }),
});

export type Statement = z.infer<typeof statement>;

/** What a note says, whatever its layout: numbers as they were typed, comments left out. */
export function contentDigest(reading: NoteReading, { sha256 }: Hashing): string | undefined {
  if (reading.kind === null || reading.kind === 'department') return undefined;
  return sha256(utf8(canonicalJson({ record: reading.kind, note: plainNote(reading.note, recordPlan(reading.kind)) })));
}
