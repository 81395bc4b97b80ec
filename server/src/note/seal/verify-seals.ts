import type { Department } from '@sideport/schemas';
import type { NoteReading } from '../reading/note-reading.ts';
import { envelopeDigest, opened, type Envelope } from './envelope.ts';
import { by, type SealFinding } from './finding.ts';
import { ofPeople } from './people.ts';
import type { Checking } from './primitives.ts';
import { noteId } from './seal-note.ts';
import { NAMESPACE, sameKey, type Signer } from './signers.ts';
import { contentDigest, type Statement } from './statement.ts';

export interface Register {
  readonly signers: readonly Signer[];
  readonly revoked: readonly Uint8Array[];
}

/** What came before the first seal of a note: nothing for an original, the last seal of the note for an amendment. */
export interface Before {
  readonly last: Envelope | undefined;
  /** When that one was signed. */
  readonly signedAt: string | undefined;
}

export interface Verified {
  readonly findings: readonly SealFinding[];
  /** What the next seal of the chain follows. */
  readonly after: Before;
}

export interface SealedNote {
  readonly reading: NoteReading;
  readonly bytes: Uint8Array;
  readonly seals: readonly Envelope[];
}

/** Against what seals are held: who may sign with which key, and who may sign at all. */
export interface Signatories {
  readonly register: Register;
  readonly department: Department | null;
}

/** Checks the seals of one note against its bytes, its content, the register, the chain and the people it names. */
export function verifySeals(
  note: SealedNote,
  { register, department }: Signatories,
  before: Before,
  checking: Checking,
): Verified {
  const findings: SealFinding[] = [];
  const statements: Statement[] = [];
  let { last, signedAt } = before;
  for (const seal of note.seals) {
    const found = opened(
      seal,
      register.signers.map(({ key }) => key),
      checking,
    );
    if (!found.ok) {
      findings.push({
        finding: 'seal-not-readable',
        severity: 'error',
        message: `A seal does not hold: ${found.because}.`,
      });
    } else {
      const { predicate } = found.statement;
      statements.push(found.statement);
      findings.push(
        ...ofSigner(found.statement, found.key, register),
        ...ofChain(found.statement, last, signedAt, checking),
      );
      findings.push(ofContent(found.statement, note, checking));
      signedAt = predicate.signedAt;
    }
    last = seal;
  }
  // Who signed is not known while a seal cannot be opened.
  if (statements.length === note.seals.length) findings.push(...ofPeople(note.reading, statements, department));
  return { findings, after: { last, signedAt } };
}

function ofContent(
  about: Statement,
  { reading, bytes }: { readonly reading: NoteReading; readonly bytes: Uint8Array },
  checking: Checking,
): SealFinding {
  const [{ name, digest }] = about.subject;
  if (checking.sha256(bytes) === digest.sha256) {
    return { finding: 'seal-holds', severity: 'info', message: `${by(about)} holds: the note is as it was signed.` };
  }
  if (name !== noteId(reading)) {
    return {
      finding: 'seal-of-another-note',
      severity: 'error',
      message: `${by(about)} is of the note ${name}, not of this one.`,
    };
  }
  if (contentDigest(reading, checking) === about.predicate.contentDigest.sha256) {
    // A note is sealed only when all of it could be read: what cannot be read now was added, and the digest lacks it.
    if (reading.remarks.some(({ severity }) => severity === 'error'))
      return changed(about, 'something was added to the content');
    return {
      finding: 'seal-layout-changed',
      severity: 'warning',
      message: `${by(about)} holds for what the note says; its layout or comments were changed after signing. Restore the signed file.`,
    };
  }
  return changed(about, 'the content was changed');
}

function changed(about: Statement, what: string): SealFinding {
  return {
    finding: 'seal-content-changed',
    severity: 'error',
    message: `${by(about)} does not hold: ${what} after signing. Restore the signed file, and write what is to be changed as an amendment.`,
  };
}

function ofSigner(about: Statement, key: Uint8Array, register: Register): readonly SealFinding[] {
  const { signer, signedAt } = about.predicate;
  const entries = register.signers.filter((entry) => sameKey(entry.key, key));
  const named = entries.filter(({ names }) => names.includes(signer));
  const at = Date.parse(signedAt);
  if (named.length === 0) {
    return [
      {
        finding: 'seal-signer-not-named',
        severity: 'error',
        message: `${by(about)} was made with a key of ${entries.flatMap(({ names }) => names).join(', ')}.`,
      },
    ];
  }
  const forSeals = named.filter((entry) => entry.forSeals);
  if (forSeals.length === 0) {
    return [
      {
        finding: 'seal-key-not-for-seals',
        severity: 'error',
        message: `${by(about)} was made with a key that the register lists for other purposes only. For seals its line needs namespaces="${NAMESPACE}".`,
      },
    ];
  }
  const valid = forSeals.some(
    ({ validAfter = -Infinity, validBefore = Infinity }) => at >= validAfter && at < validBefore,
  );
  return [
    ...(valid
      ? []
      : [
          {
            finding: 'seal-key-not-valid-then',
            severity: 'error',
            message: `${by(about)} was made with a key that the register did not allow at that time.`,
          } as const,
        ]),
    ...(register.revoked.some((one) => sameKey(one, key))
      ? [
          {
            finding: 'seal-key-revoked',
            severity: 'error',
            message: `${by(about)} was made with a key that is revoked now: whether before or after, the seal alone cannot tell.`,
          } as const,
        ]
      : []),
  ];
}

function ofChain(
  about: Statement,
  last: Envelope | undefined,
  lastSigned: string | undefined,
  checking: Checking,
): readonly SealFinding[] {
  const expected = last ? envelopeDigest(last, checking) : null;
  const named = about.predicate.previousSeal?.sha256 ?? null;
  const goesBack = lastSigned !== undefined && Date.parse(about.predicate.signedAt) < Date.parse(lastSigned);
  return [
    ...(named === expected
      ? []
      : [
          {
            finding: 'seal-chain-broken',
            severity: 'error',
            message: `${by(about)} does not follow ${expected === null ? 'from nothing, as the first one must' : 'the seal before it'}: one is missing, or two were made beside each other.`,
          } as const,
        ]),
    ...(goesBack
      ? [
          {
            finding: 'seal-time-goes-back',
            severity: 'error',
            message: `${by(about)} is dated before the one it follows (${lastSigned}).`,
          } as const,
        ]
      : []),
  ];
}
