/** “a”, “a and b”, “a, b and c”. */
export function listed(words: readonly string[], joint = 'and'): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} ${joint} ${last}`;
}

/** The first letter small, unless the word is written in capitals (UDI, OCT). */
export function small(text: string): string {
  return /^[A-Z][a-z]/u.test(text) ? `${text.charAt(0).toLowerCase()}${text.slice(1)}` : text;
}

export function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}

/** A number with at most so many decimals and no trailing zeros. */
export function rounded(value: number, decimals: number): string {
  return String(Number(value.toFixed(decimals)));
}

/** A power as the trade writes it: +21.50 D, -3.00 D. */
export function dioptres(value: number, decimals = 2): string {
  return `${value < 0 ? '' : '+'}${value.toFixed(decimals)} D`;
}

/** “1 day”, “3 days”. */
export function counted(count: number, thing: string): string {
  return `${count} ${thing}${count === 1 ? '' : 's'}`;
}

/** Whether two texts say the same, blanks and capitals aside. */
export function sameWords(a: string, b: string): boolean {
  return folded(a) === folded(b);
}

function folded(text: string): string {
  return text.trim().replace(/\s+/gu, ' ').toLowerCase();
}
