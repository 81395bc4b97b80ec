import { toPoint, toVector, type Point } from '../calculations/astigmatism/double-angle.ts';
import { arctan2 } from '../calculations/angles.ts';
import type { Vector } from '../calculations/quantities.ts';
import { fQuantileTwo } from './distributions.ts';
import { covariance, mean, standardDeviation } from './summaries.ts';

/** An ellipse about the centroid, in the double-angle plane. */
export interface Ellipse {
  /** Half lengths of the long and the short axis, in dioptres. */
  readonly semiMajor: number;
  readonly semiMinor: number;
  /** Direction of the long axis in the double-angle plane, 0 <= angle < 180. It is no meridian. */
  readonly planeAngle: number;
}

export interface HotellingTest {
  readonly t2: number;
  readonly f: number;
  /** Chance of so large a T2 when the true centroid is zero. */
  readonly p: number;
}

export interface AstigmatismGroup {
  readonly n: number;
  readonly centroid: Vector;
  readonly centroidPoint: Point;
  readonly meanMagnitude: number;
  /** Null with fewer than two eyes, as are all spreads below. */
  readonly sdMagnitude: number | null;
  readonly sdX: number | null;
  readonly sdY: number | null;
  readonly covariance: number | null;
  /** sqrt(sdX^2 + sdY^2): a convention, not a spread along a line. */
  readonly sdTotal: number | null;
  /** Null with fewer than three eyes, or when all eyes lie on one line. */
  readonly hotelling: HotellingTest | null;
  readonly ellipses: { readonly centroid: Ellipse; readonly individuals: Ellipse } | null;
  /** Why spreads or ellipses are missing, in plain words; null when nothing is missing. */
  readonly missing: string | null;
}

/** Ellipse d' S^-1 d <= scale of a 2 by 2 covariance S. */
function ellipseOf(varX: number, varY: number, cov: number, scale: number): Ellipse {
  const middle = (varX + varY) / 2;
  const reach = Math.hypot((varX - varY) / 2, cov);
  const angle = arctan2(2 * cov, varX - varY) / 2;
  return {
    semiMajor: Math.sqrt(scale * (middle + reach)),
    semiMinor: Math.sqrt(scale * (middle - reach)),
    planeAngle: angle < 0 ? angle + 180 : angle,
  };
}

/**
 * Centroid, spread, Hotelling's test against no effect and confidence ellipses of a group of astigmatism vectors.
 * Null of an empty group. Meridians are never averaged as numbers.
 * Sources: Holladay, Moran, Kezirian, J Cataract Refract Surg 2001;27:61-79 (double angle, centroid; from memory);
 * Hotelling, Ann Math Stat 1931;2:360-78 (from memory). F quantile with 2 and n - 2 degrees of freedom:
 * centroid 2(n-1)/(n(n-2)) F, a further eye 2(n-1)(n+1)/(n(n-2)) F.
 */
export function summariseAstigmatism(eyes: readonly Vector[], level = 0.95): AstigmatismGroup | null {
  const n = eyes.length;
  const points = eyes.map(toPoint);
  const xs = points.map((p) => p.x);
  const ys = points.map((p) => p.y);
  const x = mean(xs);
  const y = mean(ys);
  const magnitudes = eyes.map((e) => e.magnitude);
  const meanMagnitude = mean(magnitudes);
  if (x === null || y === null || meanMagnitude === null) return null;
  const varX = covariance(xs, xs);
  const varY = covariance(ys, ys);
  const cov = covariance(xs, ys);
  const basics = { n, centroid: toVector({ x, y }), centroidPoint: { x, y }, meanMagnitude };
  if (varX === null || varY === null || cov === null) {
    const none = { sdMagnitude: null, sdX: null, sdY: null, covariance: null, sdTotal: null };
    return {
      ...basics,
      ...none,
      hotelling: null,
      ellipses: null,
      missing: 'One eye has no spread: no SD, no ellipse.',
    };
  }
  const spread = {
    sdMagnitude: standardDeviation(magnitudes),
    sdX: Math.sqrt(varX),
    sdY: Math.sqrt(varY),
    covariance: cov,
    sdTotal: Math.sqrt(varX + varY),
  };
  const determinant = varX * varY - cov * cov;
  if (n < 3) {
    return { ...basics, ...spread, hotelling: null, ellipses: null, missing: 'An ellipse needs three eyes or more.' };
  }
  if (determinant <= 1e-12 * (varX + varY) ** 2) {
    const missing = 'All eyes lie on one line of the plot: no ellipse.';
    return { ...basics, ...spread, hotelling: null, ellipses: null, missing };
  }
  const t2 = (n * (x * x * varY - 2 * x * y * cov + y * y * varX)) / determinant;
  const f = (t2 * (n - 2)) / (2 * (n - 1));
  const scale = ((2 * (n - 1)) / (n * (n - 2))) * fQuantileTwo(level, n - 2);
  return {
    ...basics,
    ...spread,
    hotelling: { t2, f, p: (1 + (2 * f) / (n - 2)) ** (-(n - 2) / 2) },
    ellipses: {
      centroid: ellipseOf(varX, varY, cov, scale),
      individuals: ellipseOf(varX, varY, cov, scale * (n + 1)),
    },
    missing: null,
  };
}
