const compiled = new Map<string, RegExp>();

/** A pattern of references: # stands for a digit, A for a capital letter, everything else for itself. */
export function matchesPattern(text: string, pattern: string): boolean {
  let known = compiled.get(pattern);
  if (known === undefined) {
    const source = Array.from(pattern, (sign) =>
      sign === '#' ? String.raw`\d` : sign === 'A' ? '[A-Z]' : sign.replace(/[.*+?^${}()|[\]\\/]/u, String.raw`\$&`),
    ).join('');
    known = new RegExp(`^${source}$`, 'u');
    compiled.set(pattern, known);
  }
  return known.test(text);
}

/** Whether a pattern has a place at all. */
export function hasPlaces(pattern: string): boolean {
  return /[#A]/u.test(pattern);
}
