import { DECIMAL, DEGREE, decimalComma, hasDecimalComma } from './decimal.ts';
import { bad, good, type Notation, type Reading } from './notation.ts';

/** A spectacle refraction: sphere and cylinder in dioptres, axis in degrees (null without cylinder). */
export interface Refraction {
  readonly sphere: number;
  readonly cylinder: number;
  readonly axis: number | null;
}

/** Wider than any eye that is refracted with spectacles, in dioptres. */
const [LEAST_SPHERE, MOST_SPHERE, MOST_CYLINDER] = [-45, 35, 20];

const number = String.raw`(?:${DECIMAL}|plano|pl)`;
const sphereUnit = String.raw`(?:DS|D\s*sph(?:ere)?|D|sph(?:ere|erical)?)`;
const shape = new RegExp(
  String.raw`^(${number})\s*${sphereUnit}?(?:\s*(?:/|,|\s)\s*(${DECIMAL})\s*(?:DC|D\s*cyl|D|cyl)?\s*(?:x|×|@|ax(?:is)?)\s*(\d{1,3}(?:\.\d+)?)\s*${DEGREE}?)?$`,
  'iu',
);
const expected = 'sphere / cylinder x axis, such as -14.25 / -1.50 x 95, or a sphere alone such as -0.50';

export const refraction: Notation<Refraction> = {
  name: 'refraction',
  expected,
  bareNumber: true,
  examples: ['-14.25 / -1.50 x 95', '-0.50', 'plano'],
  read: readRefraction,
  write: (text) => {
    const match = shape.exec(text.trim());
    if (match?.[1] === undefined) return text;
    const sphere = /^pl/iu.test(match[1]) ? 'plano' : match[1];
    return match[2] === undefined ? sphere : `${sphere} / ${match[2]} x ${match[3]}`;
  },
};

function readRefraction(text: string): Reading<Refraction> {
  const match = shape.exec(text.trim());
  if (match?.[1] === undefined) {
    if (hasDecimalComma(text)) return decimalComma(text);
    return bad('unreadable-value', `“${text}” is not a refraction. Expected ${expected}.`);
  }
  const sphere = /^pl/iu.test(match[1]) ? 0 : toNumber(match[1]);
  const cylinder = match[2] === undefined ? 0 : toNumber(match[2]);
  const axis = match[3] === undefined ? null : Number(match[3]);
  if (axis !== null && axis > 180) {
    return bad('unreadable-value', `A cylinder axis runs from 0 to 180 degrees; “${text}” has ${match[3]}.`);
  }
  if (sphere < LEAST_SPHERE || sphere > MOST_SPHERE || Math.abs(cylinder) > MOST_CYLINDER) {
    return bad(
      'unreadable-value',
      `“${text}” is outside what is possible: sphere ${LEAST_SPHERE} to +${MOST_SPHERE} D, cylinder up to ${MOST_CYLINDER} D. Is the point in its place?`,
    );
  }
  return good({ sphere, cylinder, axis: cylinder === 0 ? null : axis });
}

function toNumber(text: string): number {
  return Number(text.replace(/[\u2212\u2013]/u, '-'));
}
