import type {
  Field,
  FollowUp,
  Keratometry,
  Offset as RecordedOffset,
  Operation,
  Place,
  Quantity,
} from '@sideport/schemas';
import { positionOf } from '../calculations/position/site.ts';
import { brokenRim } from '../computing/capsule-rim.ts';
import type { ComputedNote, ComputedVector } from '../computing/computed.ts';
import { placePhrase } from '../prose/places.ts';
import { positionOfPlace } from './place.ts';
import { absentFrom, pupilAidsOf, ringOf, written, zonuleOf, type ToPosition } from './scene-of-capsule.ts';
import type { AstigmatismVector, AstigmatismVectors, Disc, Incision, Offset, Optic, Scene } from './scene.ts';

/** What the picture of an operation is drawn from; whatever is not recorded stays away. */
export function sceneOf(note: Operation, visits: readonly FollowUp[] = []): Scene {
  const side = note.eye?.value;
  const seat = note.seat === undefined || side === undefined ? undefined : positionOf(note.seat.value, side);
  const toPosition: ToPosition = (place) => positionOfPlace(place, side, seat);
  const whiteToWhite = note.preop?.biometry?.['white-to-white'];
  const { capsulotomy, lens, plan } = note;
  const aphakic = lens?.placed?.value === 'none';
  const found = lens?.axis ?? visits.find((visit) => visit.lens?.axis !== undefined)?.lens?.axis;
  return {
    eye: note.eye && { ...written(note.eye), side: note.eye.value },
    seat: note.seat && seat !== undefined ? { ...written(note.seat), position: seat } : undefined,
    limbus: whiteToWhite && { ...written(whiteToWhite), diameter: whiteToWhite.value.amount },
    incisions: note.incisions?.items.map((incision): Incision => ({
      ...written(incision.$),
      // A port through the pars plana lies outside what the picture shows of the eye: as any other opening.
      kind: incision.kind === undefined || incision.kind.value === 'sclerotomy' ? 'other' : incision.kind.value,
      position: incision.at && toPosition(incision.at.value),
      width: (incision['enlarged-to'] ?? incision.width)?.value.amount,
      hook: incision.kind !== undefined && /^hook\b/iu.test(incision.kind.text.trim()),
    })),
    steepMeridian: steep(note),
    capsulotomy: capsulotomy && {
      ...disc(capsulotomy, capsulotomy.diameter, capsulotomy['off-centre'], toPosition),
      brokenRim: brokenRim(note),
    },
    optic: aphakic ? undefined : opticOf(lens, toPosition),
    ring: ringOf(note),
    zonule: zonuleOf(note, toPosition),
    pupilAids: pupilAidsOf(note),
    absent: absentFrom(note),
    aimedAxis: aphakic
      ? undefined
      : plan?.lens?.axis && { ...written(plan.lens.axis), axis: plan.lens.axis.value.amount },
    foundAxis: found && { ...written(found), axis: found.value.amount },
  };
}

/** Astigmatism before, expected and achieved, from what was computed; the achieved one from the visits. */
export function astigmatismOf(computed: ComputedNote, achieved: AstigmatismVector | undefined): AstigmatismVectors {
  return {
    before: vectorNamed(computed, 'corneal-astigmatism'),
    expected: vectorNamed(computed, 'expected-corneal-astigmatism'),
    achieved,
  };
}

export function vectorNamed(computed: ComputedNote, name: string): AstigmatismVector | undefined {
  const value = computed.values.find((each) => each.name === name);
  if (value === undefined || !isVector(value.value)) return undefined;
  const { magnitude, axis } = value.value;
  return { path: value.path, span: value.span, magnitude, meridian: axis };
}

function isVector(value: unknown): value is ComputedVector {
  return typeof value === 'object' && value !== null && 'magnitude' in value && 'axis' in value;
}

function disc(
  section: { readonly $: Place },
  diameter: Field<Quantity> | undefined,
  offset: Field<RecordedOffset> | undefined,
  toPosition: ToPosition,
): Disc {
  return {
    ...written(section.$),
    diameter: diameter?.value.amount,
    offset: offset && offsetOf(offset.value, toPosition),
  };
}

function opticOf(lens: Operation['lens'], toPosition: ToPosition): Optic | undefined {
  if (lens === undefined) return undefined;
  return {
    ...disc(lens, lens['optic-diameter'], lens['off-centre'], toPosition),
    place: placePhrase(lens.placed),
    outOfBag: lens.placed !== undefined && lens.placed.value !== 'capsular bag',
  };
}

function offsetOf({ distance, toward }: RecordedOffset, toPosition: ToPosition): Offset | undefined {
  if (toward === undefined) return { distance, toward: 0 };
  const position = toPosition(toward);
  return position === undefined ? undefined : { distance, toward: position };
}

/** The meridian of the stronger of two keratometry readings; not known when one has no meridian or both are equal. */
function steep({ preop }: Operation): Scene['steepMeridian'] {
  const [k1, k2] = [preop?.biometry?.k1, preop?.biometry?.k2];
  if (k1 === undefined || k2 === undefined) return undefined;
  const difference = dioptres(k1.value) - dioptres(k2.value);
  const stronger = difference > 0 ? k1 : k2;
  if (difference === 0 || stronger.value.meridian === null) return undefined;
  return { ...written(stronger), meridian: stronger.value.meridian };
}

/** Only which of two is stronger is asked, so that the index makes no difference. */
function dioptres({ amount, unit }: Keratometry): number {
  return unit === 'mm' ? 337.5 / amount : amount;
}
