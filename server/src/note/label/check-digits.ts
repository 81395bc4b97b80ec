const CHARACTER_SET_82 = '!"%&\'()*+,-./0123456789:;<=>?ABCDEFGHIJKLMNOPQRSTUVWXYZ_abcdefghijklmnopqrstuvwxyz';
const CHARACTER_SET_32 = '23456789ABCDEFGHJKLMNPQRSTUVWXYZ';
const CHARACTER_SET_43 = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ-. $/+%';
const PRIMES = [2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71, 73, 79, 83];

/**
 * The check digit that belongs behind a string of digits: weights 3, 1, 3 ... from the right.
 * Source: GS1 General Specifications, standard check digit calculation.
 * @returns undefined when the body holds anything but digits
 */
export function gs1CheckDigit(body: string): string | undefined {
  if (!/^\d+$/.test(body)) return undefined;
  let sum = 0;
  for (let place = 0; place < body.length; place++) {
    sum += Number(body[body.length - 1 - place]) * (place % 2 === 0 ? 3 : 1);
  }
  return String((10 - (sum % 10)) % 10);
}

/**
 * The two check characters behind a model number (GMN, 8013; master device identifier, 8014).
 * Source: GS1 General Specifications, check character calculation for alphanumeric keys: prime weights
 * from the right, modulo 1021, written in base 32.
 * @returns undefined when the body is longer than 23 characters or holds one outside character set 82
 */
export function gs1CheckPair(body: string): string | undefined {
  if (body.length > PRIMES.length) return undefined;
  let sum = 0;
  for (let place = 0; place < body.length; place++) {
    const value = CHARACTER_SET_82.indexOf(body.charAt(body.length - 1 - place));
    if (value < 0) return undefined;
    sum += value * (PRIMES[place] ?? 0);
  }
  sum %= 1021;
  return CHARACTER_SET_32.charAt(sum >> 5) + CHARACTER_SET_32.charAt(sum & 31);
}

/**
 * The check character of a HIBC label: the sum of the values of all characters, modulo 43.
 * Source: ANSI/HIBC supplier labelling standard.
 * @returns undefined when the body holds a character the standard does not know
 */
export function hibcCheckCharacter(body: string): string | undefined {
  let sum = 0;
  for (const character of body) {
    const value = CHARACTER_SET_43.indexOf(character);
    if (value < 0) return undefined;
    sum += value;
  }
  return CHARACTER_SET_43.charAt(sum % 43);
}

/** The place of the first character outside GS1 character set 82, or -1. */
export function firstOutsideSet82(value: string): number {
  return Array.from(value).findIndex((character) => !CHARACTER_SET_82.includes(character));
}
