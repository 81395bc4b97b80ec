import { DECIMAL, DEGREE } from './decimal.ts';
import { bad, good, type Notation, type Reading } from './notation.ts';

/** The eight sector words of an eye. */
export const siteWords = [
  'temporal',
  'superotemporal',
  'superior',
  'superonasal',
  'nasal',
  'inferonasal',
  'inferior',
  'inferotemporal',
] as const;
export type SiteWord = (typeof siteWords)[number];

/**
 * A place on the eye: a position on the dial (0 to 360, ISO 8429: counter-clockwise from the right-hand horizontal
 * as a person facing the eye sees it), a sector word, or a clock hour. The clock is the anatomical one
 * (12 superior, as a person facing the eye sees it) unless the text says that it is the surgeon's own view.
 */
export type Site =
  | { readonly kind: 'degrees'; readonly degrees: number }
  | { readonly kind: 'word'; readonly word: SiteWord }
  | { readonly kind: 'clock'; readonly hour: number; readonly view: 'anatomical' | 'surgeon' };

const degrees = new RegExp(String.raw`^(${DECIMAL})\s*(?:${DEGREE}|deg|degrees?)?$`, 'u');
const view = String.raw`(?:\s*(?:\(|,)?\s*(surgeon(?:'s)?(?: view| clock)?|seen by the surgeon|anatomical)\)?)?`;
const clock = new RegExp(
  String.raw`^(\d{1,2})(?:(?:[:.](?:00|30)|\.5)?\s*o'?\s?clock|\s*h(?:ours?|rs?)?|:00|:30)${view}$`,
  'u',
);
/** Half past ten on the clock, or ten degrees and three tenths: nobody can tell. */
const hourOrDegrees = /^(?:[1-9]|1[0-2])\.(?:30|00)$/u;
const surgeonsView = /surgeon/u;

export const siteExpected = "a position such as 100°, superotemporal or 11 o'clock";

export const site: Notation<Site> = {
  name: 'place on the eye',
  expected: siteExpected,
  bareNumber: true,
  examples: ['100°', 'superotemporal', "11 o'clock", "4 o'clock, surgeon's view"],
  read: readSite,
  write: (text) => {
    const reading = readSite(text);
    return reading.ok ? writeSite(reading.value, text) : text;
  },
};

/** Reads a place. A position above 360 or below 0 and an hour above 12 are not places. */
export function readSite(text: string): Reading<Site> {
  const folded = text.trim().toLowerCase().replace(/[’ʼ]/gu, "'").replace(/\s+/gu, ' ');
  const word = siteWords.find(
    (candidate) => candidate === folded || candidate === folded.replace(/[- ]/gu, '') || folded === `${candidate}ly`,
  );
  if (word !== undefined) return good({ kind: 'word', word });
  if (hourOrDegrees.test(folded)) {
    const [hour, minutes] = folded.split('.');
    const time = minutes === '00' ? hour : `${hour}:${minutes}`;
    return bad(
      'unreadable-value',
      `“${text}” may be a clock hour or degrees. Write ${time} o'clock or ${Number(folded)}°, whichever is meant.`,
    );
  }
  const typed = degrees.exec(folded)?.[1];
  if (typed !== undefined) {
    const value = Number(typed);
    if (value >= 0 && value <= 360) return good({ kind: 'degrees', degrees: value });
    return bad('unreadable-value', `“${text}” is outside the dial: positions run from 0° to 360°.`);
  }
  const hours = clock.exec(folded);
  if (hours?.[1] !== undefined) {
    const hour = Number(hours[1]) + (/[:.]30|\.5/u.test(folded) ? 0.5 : 0);
    if (hour >= 1 && hour < 13) {
      return good({ kind: 'clock', hour, view: surgeonsView.test(folded) ? 'surgeon' : 'anatomical' });
    }
    return bad('unreadable-value', `“${text}” is no clock hour: hours run from 1 to 12.`);
  }
  return bad('unreadable-value', `“${text}” is not a place on the eye. Expected ${siteExpected}.`);
}

/** The tidy text of a place; degrees keep the number as typed. */
export function writeSite(value: Site, typed?: string): string {
  if (value.kind === 'word') return value.word;
  if (value.kind === 'degrees') return `${/[\d.]+/u.exec(typed ?? '')?.[0] ?? value.degrees}°`;
  const hour = Number.isInteger(value.hour) ? String(value.hour) : `${Math.floor(value.hour)}:30`;
  return `${hour} o'clock${value.view === 'surgeon' ? ", surgeon's view" : ''}`;
}
