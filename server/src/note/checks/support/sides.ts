import { Lately } from '../../lately.ts';
import type { Field, Operation } from '@sideport/schemas';
import { operationCheck, type Check, type CheckInfo } from '../check.ts';
import { related } from './place.ts';
import { listed } from './words.ts';

type Side = 'right' | 'left';

/** One place of a note, besides the eye itself, that names a side. */
interface NamedSide {
  readonly what: string;
  readonly field: Field<Side>;
}

const places: readonly { readonly what: string; readonly of: (note: Operation) => Field<Side> | undefined }[] = [
  { what: 'the plan', of: (note) => note.plan?.eye },
  { what: 'the diagnosis', of: (note) => note.diagnosis?.eye },
  { what: 'the biometry', of: (note) => note.preop?.biometry?.eye },
  { what: 'the consent', of: (note) => note.safety?.consent?.eye },
  { what: 'the mark on the patient', of: (note) => note.safety?.['site-marked'] },
  { what: 'the verification of the lens', of: (note) => note.safety?.['lens-verified']?.eye },
];

interface Sides {
  readonly eye?: Field<Side>;
  /** Places that name the other side. */
  readonly others: readonly NamedSide[];
  /** All places but the eye itself agree on the other side, and there are at least two: then the eye is in doubt. */
  readonly eyeInDoubt: boolean;
}

const known = new Lately<Operation, Sides>();

export function sidesOf(note: Operation): Sides {
  const before = known.get(note);
  if (before !== undefined) return before;
  const { eye } = note;
  let named = 0;
  const others: NamedSide[] = [];
  for (const { what, of } of places) {
    const field = of(note);
    if (field === undefined) continue;
    named += 1;
    if (eye !== undefined && field.value !== eye.value) others.push({ what, field });
  }
  const sides = {
    ...(eye === undefined ? {} : { eye }),
    others,
    eyeInDoubt: others.length > 1 && others.length === named,
  };
  known.set(note, sides);
  return sides;
}

/** The side of the note, when it can be relied on. */
export function certainEye(note: Operation): Side | undefined {
  return sidesOf(note).eyeInDoubt ? undefined : note.eye?.value;
}

export const findTheSide =
  'Find out from the patient, the consent and the biometry print-out which side is right, and correct the wrong one by hand.';

interface SideCheck extends Pick<CheckInfo, 'id' | 'summary'> {
  readonly what: string;
}

/** A check that one place names the side of the note. Where the eye itself is in doubt, another check says so, once. */
export function sideCheck({ what, ...info }: SideCheck): Check {
  return operationCheck({
    ...info,
    group: 'side and identity',
    severity: 'error',
    allowable: false,
    run: (note, say) => {
      const { eye, others, eyeInDoubt } = sidesOf(note);
      const place = others.find((candidate) => candidate.what === what);
      if (eye === undefined || eyeInDoubt || place === undefined) return;
      say({
        at: place.field,
        message: `Side: ${what} says ${place.field.value}, but this note is about the ${eye.value} eye. Find out which is right.`,
        related: [related(`the note: ${eye.value}`, eye)],
      });
    },
  });
}

export function namesOf(others: readonly NamedSide[]): string {
  return listed(others.map(({ what }) => what));
}
