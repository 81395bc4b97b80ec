import { expectedCornealAstigmatism, expectedInducedAstigmatism } from '../calculations/astigmatism/expected.ts';
import { refused, type Outcome } from '../calculations/outcome.ts';
import { siteAt } from '../calculations/position/site.ts';
import type { Eye, Vector } from '../calculations/quantities.ts';
import type { Cornea } from './corneas.ts';
import type { StaffEntry } from './department-entries.ts';
import { amountOf, from, known, missing, withCautions, type Known } from './known.ts';
import type { MainIncision } from './main-incision.ts';
import { positionOfPlace } from './positions.ts';

export interface InducedExpectation {
  readonly inputs: {
    readonly flattening: Known<number>;
    readonly position: Known<number>;
    readonly width: Known<number>;
    readonly eyes: Known<number>;
  };
  readonly outcome: Outcome<Vector>;
}

/** Widths this near to each other are one width: blades and enlargements are given to 0.1 or 0.2 mm. */
const SAME_WIDTH_MM = 0.11;
const FEW_EYES = 20;

type Staff = Extract<StaffEntry, { ok: true }>['entry'];
type Effect = NonNullable<Staff['incision-effect']>['items'][number];

/** The surgeon's own centroid for this width and site: one found for this very eye before one for both. */
function effectOf(
  { ref, entry }: Extract<StaffEntry, { ok: true }>,
  incision: { readonly position: number; readonly widthMm: number },
  eye: Eye,
): Effect | string {
  const site = siteAt(incision.position, eye);
  const fitting = (entry['incision-effect']?.items ?? []).filter((effect) => {
    const position =
      effect.site && positionOfPlace(effect.site.value, { ok: true, value: eye, unit: '' }, missing('the seat'));
    const width = effect.width?.value.amount;
    return (
      position?.ok === true &&
      siteAt(position.value, eye) === site &&
      width !== undefined &&
      Math.abs(width - incision.widthMm) <= SAME_WIDTH_MM &&
      (effect.eye === undefined || effect.eye.value === eye)
    );
  });
  const best = fitting.toSorted(
    (a, b) =>
      Number(b.eye !== undefined) - Number(a.eye !== undefined) ||
      Math.abs((a.width?.value.amount ?? 0) - incision.widthMm) -
        Math.abs((b.width?.value.amount ?? 0) - incision.widthMm),
  )[0];
  return (
    best ?? `the department file has no incision effect of ${ref} for a ${site} incision of ${incision.widthMm} mm`
  );
}

const NO_INCISION = refused('no main incision is recorded or planned');

/** What this surgeon's main incision is expected to do, from the centroid in the department file. */
export function expectedInduced(
  incision: MainIncision | undefined,
  surgeon: StaffEntry,
  eye: Known<Eye>,
): InducedExpectation {
  const position = incision?.position ?? NO_INCISION;
  const width = incision?.widthMm ?? NO_INCISION;
  const person: Known<Extract<StaffEntry, { ok: true }>> = surgeon.ok
    ? { ok: true, value: surgeon, unit: '' }
    : surgeon;
  const effect = from({ position, width, eye, person }, (given): Known<Effect> => {
    const found = effectOf(given.person, { position: given.position, widthMm: given.width }, given.eye);
    return typeof found === 'string' ? refused(found) : { ok: true, value: found, unit: '' };
  });
  const flattening = from({ effect }, (given) =>
    amountOf(given.effect.flattening, 'the flattening of the incision effect in the department file'),
  );
  const eyes = from({ effect }, (given) =>
    known(given.effect.eyes?.value, 'the number of eyes the incision effect rests on'),
  );
  const outcome = from({ flattening, position }, (given) =>
    expectedInducedAstigmatism({ flatteningD: given.flattening, incision: given.position }),
  );
  return { inputs: { flattening, position, width, eyes }, outcome: withCautions(outcome, fewEyes(eyes)) };
}

function fewEyes(eyes: Known<number>): string[] {
  if (!eyes.ok) return ['The department file does not say on how many eyes the centroid rests.'];
  return eyes.value < FEW_EYES ? [`The centroid rests on ${eyes.value} eyes only.`] : [];
}

/** The cornea expected after the operation. */
export function expectedCornea({ astigmatism }: Cornea, induced: InducedExpectation): Outcome<Vector> {
  return from({ before: astigmatism, induced: induced.outcome }, expectedCornealAstigmatism);
}
