import type { NoteReading } from '../reading/note-reading.ts';
import { envelopeDigest, opened, type Envelope } from './envelope.ts';
import type { Checking } from './primitives.ts';
import { noteId } from './seal-note.ts';
import { sameKey, type Signer } from './signers.ts';
import { contentDigest, type Statement } from './statement.ts';

/** One thing that was found about a seal. */
export interface SealFinding {
  readonly finding:
    | 'seal-holds'
    | 'seal-layout-changed'
    | 'seal-content-changed'
    | 'seal-of-another-note'
    | 'seal-not-readable'
    | 'seal-signer-unknown'
    | 'seal-signer-not-named'
    | 'seal-key-not-valid-then'
    | 'seal-key-revoked'
    | 'seal-chain-broken'
    | 'seal-time-goes-back'
    | 'seal-supervisor-missing';
  readonly severity: 'error' | 'warning' | 'info';
  readonly message: string;
}

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

/** Checks the seals of one note against its bytes, its content, the register and the chain. */
export function verifySeals(
  note: { readonly reading: NoteReading; readonly bytes: Uint8Array; readonly seals: readonly Envelope[] },
  register: Register,
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
  findings.push(...ofSupervision(note.reading, statements));
  return { findings, after: { last, signedAt } };
}

const by = ({ predicate }: Statement): string =>
  `The seal of ${predicate.signer} as ${predicate.meaning}, ${predicate.signedAt},`;

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
    return {
      finding: 'seal-layout-changed',
      severity: 'warning',
      message: `${by(about)} holds for what the note says; its layout or comments were changed after signing. Restore the signed file.`,
    };
  }
  return {
    finding: 'seal-content-changed',
    severity: 'error',
    message: `${by(about)} does not hold: the content was changed after signing. Restore the signed file, and write what is to be changed as an amendment.`,
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
  const valid = named.some(
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

/** The note of a trainee needs the seal of a supervisor as well. */
function ofSupervision(reading: NoteReading, statements: readonly Statement[]): readonly SealFinding[] {
  if (reading.kind !== 'operation' || statements.length === 0) return [];
  const authors = statements
    .filter(({ predicate }) => predicate.meaning === 'author')
    .map(({ predicate }) => predicate.signer);
  const trainee = reading.note.team?.items.find(
    (one) => authors.includes(one.ref?.value ?? '') && /trainee/u.test(one.grade?.value ?? ''),
  );
  if (
    !trainee ||
    statements.some(({ predicate }) => predicate.meaning === 'supervisor' && predicate.signer !== trainee.ref?.value)
  )
    return [];
  const message = `The note of ${trainee.ref?.value ?? 'a trainee'} (${trainee.grade?.value ?? 'trainee'}) has no seal of a supervisor yet.`;
  return [{ finding: 'seal-supervisor-missing', severity: 'error', message }];
}
