import type { Operation } from '@sideport/schemas';

export { removesLens } from '../../computing/natural-lens.ts';

/** What a note says of the course as a whole, so that checks ask the same questions in the same way. */

const WITHOUT_IMPLANT = [
  'phacoemulsification',
  'intracapsular extraction',
  'lens repositioning',
  'peripheral iridotomy',
];

/** Whether a lens is implanted: as recorded, or else as the procedure says. */
export function implantsLens({ procedure, lens }: Operation): boolean {
  if (lens?.placed !== undefined) return lens.placed.value !== 'none';
  if (lens?.power !== undefined) return true;
  return procedure === undefined || !WITHOUT_IMPLANT.includes(procedure.value);
}

export type ComplicationKind = NonNullable<NonNullable<Operation['complications']>['items'][number]['what']>['value'];

/** The complication of a kind, when it is listed. */
export function complicationOf({ complications }: Operation, ...kinds: readonly ComplicationKind[]) {
  return complications?.items.find(({ what }) => what !== undefined && kinds.includes(what.value));
}

export function wasAbandoned(note: Operation): boolean {
  return complicationOf(note, 'abandoned') !== undefined;
}

/** Whether the operation is recorded as begun: a plan is not asked for what happened. */
export function isOperated({ status }: { readonly status: 'planned' | 'draft' | 'final' }): boolean {
  return status !== 'planned';
}

/** The main incision. */
export function mainIncision({ incisions }: Operation) {
  return incisions?.items.find(({ kind }) => kind?.value === 'main');
}

/** Whether the lens is toric, as implanted or else as planned. */
export function isToric(kind: string | undefined): boolean {
  return kind === 'toric' || kind === 'toric multifocal';
}

/** The first entry of a list that is one of these words. */
export function has<E extends { readonly value: unknown }>(
  list: { readonly items: readonly E[] } | undefined,
  ...values: readonly E['value'][]
): E | undefined {
  return list?.items.find(({ value }) => values.includes(value));
}
