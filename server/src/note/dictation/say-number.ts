const small = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
];
const tens = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

/** A whole number below ten thousand in words. */
export function sayInteger(value: number): string {
  if (value < 20) return small[value] ?? '';
  if (value < 100)
    return [tens[Math.floor(value / 10)], value % 10 === 0 ? '' : small[value % 10]].filter(Boolean).join(' ');
  if (value < 1000) {
    const rest = value % 100;
    return `${small[Math.floor(value / 100)]} hundred${rest === 0 ? '' : ` and ${sayInteger(rest)}`}`;
  }
  const rest = value % 1000;
  return `${sayInteger(Math.floor(value / 1000))} thousand${rest === 0 ? '' : ` ${rest < 100 ? 'and ' : ''}${sayInteger(rest)}`}`;
}

/** A decimal as typed, in words: every decimal place is said, a sign where one is written. Undefined for what is no decimal. */
export function sayDecimal(typed: string): string | undefined {
  const match = /^([+-]?)(\d{1,4})(?:\.(\d+))?$/u.exec(typed);
  if (match?.[2] === undefined) return undefined;
  const sign = match[1] === '-' ? 'minus ' : match[1] === '+' ? 'plus ' : '';
  const decimals = match[3] === undefined ? '' : ` point ${sayDigits(match[3])}`;
  return `${sign}${sayInteger(Number(match[2]))}${decimals}`;
}

/** Digits one by one. */
export function sayDigits(digits: string): string {
  return Array.from(digits, (digit) => small[Number(digit)] ?? digit.toLowerCase()).join(' ');
}

const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];
const ordinals: Readonly<Record<string, string>> = {
  one: 'first',
  two: 'second',
  three: 'third',
  five: 'fifth',
  eight: 'eighth',
  nine: 'ninth',
  twelve: 'twelfth',
};

/** A date written year-month-day, in words. */
export function sayDate(date: string): string | undefined {
  const match = /^(\d{2})(\d{2})-(\d{2})-(\d{2})$/u.exec(date);
  const month = months[Number(match?.[3]) - 1];
  if (match === null || month === undefined) return undefined;
  return `the ${sayOrdinal(Number(match[4]))} of ${month} ${sayInteger(Number(match[1]))} ${sayInteger(Number(match[2]))}`;
}

function sayOrdinal(value: number): string {
  const words = sayInteger(value).split(' ');
  const last = words.pop() ?? '';
  const ordinal = ordinals[last] ?? (last.endsWith('y') ? `${last.slice(0, -1)}ieth` : `${last}th`);
  return [...words, ordinal].join(' ');
}
