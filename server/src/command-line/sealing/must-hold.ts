import { claimOf, type Envelope } from '../../note/seal/envelope.ts';
import type { SealFinding } from '../../note/seal/finding.ts';
import type { Meaning } from '../../note/seal/statement.ts';
import { verifySeals, type Before, type SealedNote, type Signatories } from '../../note/seal/verify-seals.ts';
import { FileProblem } from '../world.ts';
import { checking } from './keys.ts';

export interface NewSeal extends SealedNote {
  readonly file: string;
  /** What the first seal of this note follows. */
  readonly previous: Envelope | undefined;
  readonly added: Envelope;
  readonly meaning: Meaning;
}

/**
 * A seal that would not be accepted later is better refused now. Gives what is still to be done once it is written.
 * Throws FileProblem with what is wrong.
 */
export function mustHold(seal: NewSeal, against: Signatories): readonly string[] {
  const { file, seals, added, previous, meaning } = seal;
  const before: Before = { last: previous, signedAt: previous && claimOf(previous)?.predicate.signedAt };
  const found = (all: readonly Envelope[]): readonly SealFinding[] =>
    verifySeals({ ...seal, seals: all }, against, before, checking).findings;
  // What was found about the seals that are there already is for sideport verify.
  const known = new Set(found(seals).map(({ message }) => message));
  const fresh = found([...seals, added]).filter(({ message, severity }) => severity !== 'info' && !known.has(message));
  const refused = fresh.filter((finding) => isRefused(finding, meaning));
  if (refused.length > 0) throw new FileProblem(`${file} was not sealed. ${refused.map(inWords).join(' ')}`);
  return fresh.map(({ message }) => message);
}

const inWords = ({ finding, message }: SealFinding): string =>
  finding === 'seal-author-missing' ? 'The author seals first, and has not yet.' : message;

/** A supervisor can still seal after the author; everything else stays wrong. */
function isRefused({ finding, severity }: SealFinding, meaning: Meaning): boolean {
  if (finding === 'seal-supervisor-missing') return meaning === 'supervisor';
  return severity === 'error' || (finding === 'seal-signer-may-not-sign' && meaning !== 'author');
}
