import { Lately } from '../../lately.ts';
import type { Operation, Place } from '@sideport/schemas';
import type { CheckContext } from '../check.ts';
import { dayOf, daysBetween, lastDayOf, later } from './dates.ts';
import { suturesOf } from './sutures.ts';

/** A recorded date that does not fit the date of the operation. */
export interface Misfit {
  readonly what: string;
  readonly at: Place;
}

interface Dated {
  readonly misfits: readonly Misfit[];
  /** The date of the operation itself is probably the slip. */
  readonly inDoubt: boolean;
}

const known = new Lately<Operation, Dated>();

/** How the other dates of the note agree with that of the operation; those that do not are told once when there are several. */
export function datesOf(note: Operation, context: CheckContext): Dated {
  const before = known.get(note);
  if (before !== undefined) return before;
  const { date } = note;
  const misfits = date === undefined ? [] : misfitsOf(note, date.value, context);
  const future =
    date !== undefined && context.today !== null && context.status !== 'planned' && date.value > context.today;
  const dated = { misfits, inDoubt: future || misfits.length > 1 };
  known.set(note, dated);
  return dated;
}

export function dateInDoubt(note: Operation, context: CheckContext): boolean {
  return datesOf(note, context).inDoubt;
}

/** After how long a biometry is asked about. */
export function biometryLasts(measured: string, { department }: CheckContext) {
  const limit = department?.thresholds?.['biometry-age']?.value;
  const age = limit?.kind === 'after' ? limit : { count: 12, unit: 'month' as const };
  return { until: later(measured, age.count, age.unit), age };
}

/** Whether a biometry was older than it may be on the day of the operation. */
export function isBiometryOld(measured: string, date: string, context: CheckContext): boolean {
  // A few months are never too old: no calendar has to be opened for them.
  if (context.department?.thresholds?.['biometry-age'] === undefined && monthsApart(measured, date) < 11) return false;
  const { until } = biometryLasts(measured, context);
  return until !== undefined && until < date;
}

function monthsApart(from: string, to: string): number {
  const months = (date: string) => Number(date.slice(0, 4)) * 12 + Number(date.slice(5, 7));
  return months(to) - months(from);
}

function misfitsOf(note: Operation, date: string, context: CheckContext): Misfit[] {
  const misfits: Misfit[] = [];
  const put = (at: (Place & { readonly text: string }) | undefined, isMisfit: boolean, what: string) => {
    if (at !== undefined && isMisfit) misfits.push({ what: `${what} ${at.text}`, at });
  };
  const biometry = note.preop?.biometry?.date;
  put(
    biometry,
    biometry !== undefined && (biometry.value > date || isBiometryOld(biometry.value, date, context)),
    'the biometry of',
  );
  const consent = note.safety?.consent?.date;
  put(consent, consent !== undefined && consent.value > date, 'the consent of');
  const author = note.signed?.items.find(({ meaning }) => meaning?.value === 'author')?.at;
  const delay = author === undefined ? 0 : (daysBetween(date, dayOf(author.value)) ?? 0);
  put(author, delay < 0 || delay > 2, 'the signature of');
  const expiry = note.lens?.expiry;
  put(expiry, expiry !== undefined && lastDayOf(expiry.value) < date, 'the lens expiring');
  for (const sutures of suturesOf(note)) {
    const removal = sutures['remove-by'];
    put(removal, removal !== undefined && removal.value <= date, 'the sutures to be out by');
  }
  for (const { due } of note.reviews?.items ?? [])
    put(due, due?.value.kind === 'date' && due.value.date < date, 'the review due');
  return misfits;
}
