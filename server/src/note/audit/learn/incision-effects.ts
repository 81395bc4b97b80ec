import { mean, standardDeviation } from '../../statistics/summaries.ts';
import { studentQuantile } from '../../statistics/distributions.ts';
import type { HotellingTest } from '../../statistics/astigmatism-groups.ts';
import type { Interval } from '../../statistics/proportions.ts';
import type { Case } from '../cases.ts';
import { incisionGroups } from '../incisions.ts';

/** What the department file says now. */
export interface PresentEffect {
  readonly surgeon: string;
  readonly site: string;
  readonly widthMm: number;
  readonly flatteningD: number;
}

/** A proposed entry of the department file: the centroid of one surgeon's incisions of one site and width. */
export interface ProposedEffect {
  readonly surgeon: string;
  readonly site: string;
  readonly widthMm: number;
  readonly flatteningD: number;
  readonly interval: Interval | null;
  /** Turning of the astigmatism that the department file has no place for; large ones ask for a look. */
  readonly torqueD: number;
  readonly eyes: number;
  /** Operations of the group without a keratometry after the wound has settled. */
  readonly missing: number;
  readonly since: string;
  /** Half lengths of the 95 % confidence ellipse of the centroid, D. */
  readonly ellipse: { readonly semiMajorD: number; readonly semiMinorD: number } | null;
  readonly hotelling: HotellingTest | null;
  readonly presentD: number | null;
  readonly cautions: readonly string[];
}

/** Fewer eyes than this give no proposal; fewer than ENOUGH_EYES give one with a caution. Common practice, no source. */
const LEAST_EYES = 10;
const ENOUGH_EYES = 30;
const SAME_WIDTH_MM = 0.05;
const SIGNIFICANT = 0.05;

function intervalOf(values: readonly number[]): Interval | null {
  const centre = mean(values);
  const sd = standardDeviation(values);
  if (centre === null || sd === null) return null;
  const half = (studentQuantile(0.975, values.length - 1) * sd) / Math.sqrt(values.length);
  return { low: centre - half, high: centre + half };
}

function cautionsOf(
  eyes: number,
  interval: Interval | null,
  torqueD: number,
  hotelling: HotellingTest | null,
): readonly string[] {
  return [
    ...(eyes < ENOUGH_EYES ? [`Only ${eyes} eyes: the centroid may still move by as much as itself.`] : []),
    ...(interval !== null && interval.low <= 0 && interval.high >= 0
      ? ['The interval includes no effect at all.']
      : []),
    ...(hotelling !== null && hotelling.p >= SIGNIFICANT
      ? ["The centroid is not distinguishable from no effect (Hotelling's T²)."]
      : []),
    ...(Math.abs(torqueD) >= 0.1 ? [`Mean torque ${torqueD.toFixed(2)} D: the effect is not flattening alone.`] : []),
  ];
}

/** Proposes an incision effect for every surgeon, site and width with enough eyes. Sites and widths as recorded. */
export function proposeEffects(
  cases: readonly Case[],
  surgeonOf: (one: Case) => string,
  present: readonly PresentEffect[],
): readonly ProposedEffect[] {
  return incisionGroups(cases, surgeonOf).flatMap(({ group, cases: members, induced, summary }) => {
    const surgeon = group['surgeon'];
    const widthMm = induced[0]?.incision.widthMm ?? null;
    const site = group['site'];
    if (surgeon === undefined || site === undefined || widthMm === null || induced.length < LEAST_EYES) return [];
    const flattening = induced.map((eye) => eye.flatteningD);
    const flatteningD = mean(flattening) ?? 0;
    const torqueD = mean(induced.map((eye) => eye.torqueD)) ?? 0;
    const interval = intervalOf(flattening);
    const ellipse = summary?.ellipses?.centroid;
    const hotelling = summary?.hotelling ?? null;
    const now = present.find(
      (effect) =>
        effect.surgeon === surgeon && effect.site === site && Math.abs(effect.widthMm - widthMm) < SAME_WIDTH_MM,
    );
    return [
      {
        surgeon,
        site,
        widthMm,
        flatteningD,
        interval,
        torqueD,
        eyes: induced.length,
        missing: members.length - induced.length,
        since: members[0]?.operation.date ?? '',
        ellipse: ellipse === undefined ? null : { semiMajorD: ellipse.semiMajor, semiMinorD: ellipse.semiMinor },
        hotelling,
        presentD: now?.flatteningD ?? null,
        cautions: cautionsOf(induced.length, interval, torqueD, hotelling),
      },
    ];
  });
}
