import type { Operation } from '@sideport/schemas';
import { join, longInstant } from './english.ts';
import type { Tidy } from './passage.ts';

/** What every document says at its foot. */
export const CAUTIONS: readonly string[] = [
  'Check powers, sides and axes against the biometry print-out and the lens box.',
  'Computed values are aids and decide nothing; the constants of formulas are the responsibility of the user. Local policy and licensed practice come first.',
];

type Head = Pick<Operation, 'status' | 'signed'>;

/** `patient P-3107, note OP-2031-0417`. */
export function referenceOf({ patient, id }: Pick<Operation, 'patient' | 'id'>): string {
  return `patient ${patient?.ref?.text ?? 'not recorded'}, note ${id?.text ?? 'without id'}`;
}

export function statusNotices({ status, signed }: Head, unread: number): readonly string[] {
  const unsigned = (signed?.items.length ?? 0) === 0;
  const state =
    status?.value === 'planned'
      ? 'Plan: the operation has not been done.'
      : status?.value !== 'final'
        ? 'Draft: this note is not finished.'
        : unsigned
          ? 'This note is marked final and carries no signature.'
          : undefined;
  const gaps =
    unread > 0
      ? `${unread} ${unread === 1 ? 'place' : 'places'} of this note could not be read and ${unread === 1 ? 'does' : 'do'} not appear here; check the note.`
      : undefined;
  return [state, gaps].filter((notice) => notice !== undefined);
}

export function signatureLines(signed: Operation['signed'], tidy: Tidy): readonly string[] {
  return (signed?.items ?? []).map(
    (signature) =>
      `${join([`Signed by ${tidy(signature.by) ?? 'not recorded'}`, signature.meaning && `as ${signature.meaning.value}`, signature.at && `on ${longInstant(signature.at.value)}`])}.`,
  );
}
