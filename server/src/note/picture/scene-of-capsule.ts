import type { Operation, Place, Site } from '@sideport/schemas';
import type { Absent, PupilAid, Ring, Written, Zonule } from './scene.ts';

/** The position on the dial of a recorded place; undefined where it cannot be told. */
export type ToPosition = (place: Site) => number | undefined;

export function written({ path, span }: Place): Written {
  return { path, span };
}

const RING_KINDS = { 'tension ring with eyelet': 'ring with eyelet', 'tension segment': 'segment' } as const;
const RING_OUT = { 'removed again': 'removed again', 'ring lost': 'lost' } as const;

export function ringOf({ ring }: Operation): Ring | undefined {
  if (ring?.used === undefined) return undefined;
  const kinds: Partial<Readonly<Record<string, Ring['kind']>>> = RING_KINDS;
  const out: Partial<Readonly<Record<string, Ring['out']>>> = RING_OUT;
  return {
    ...written(ring.$),
    used: ring.used.value,
    kind: kinds[ring.kind?.value ?? ''],
    out: out[ring.result?.value ?? ''],
    diameter: ring.size?.value.compressed ?? undefined,
  };
}

/** A zonule whose state is not recorded is missing, whatever else is said of it. */
export function zonuleOf({ 'capsule-state': state }: Operation, toPosition: ToPosition): Zonule | undefined {
  if (state?.zonule === undefined) return undefined;
  return {
    ...written(state.zonule),
    state: state.zonule.value,
    hours: state['zonule-extent']?.value.amount,
    middle: state['zonule-at'] && toPosition(state['zonule-at'].value),
  };
}

/** The aids that lie in the eye; drugs and stretching leave nothing to show. */
export function pupilAidsOf(note: Operation): readonly PupilAid[] {
  return (note['pupil-aid']?.items ?? []).flatMap(({ $, kind, count }) =>
    kind?.value === 'iris hooks' || kind?.value === 'expansion ring'
      ? [{ ...written($), kind: kind.value, count: count?.value }]
      : [],
  );
}

export function absentFrom({ lens, $ }: Operation): readonly Absent[] {
  const capsulotomy = $.said['capsulotomy'];
  return [
    ...(capsulotomy?.word === 'not done' ? [{ ...written(capsulotomy), part: 'capsulotomy' as const }] : []),
    ...(lens?.placed?.value === 'none' ? [{ ...written(lens.$), part: 'optic' as const }] : []),
  ];
}
