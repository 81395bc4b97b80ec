/** A value that is known from elsewhere, to be chosen and never written by itself. */
export interface Offer {
  readonly text: string;
  /** Where it is known from, in a few words. */
  readonly from: string;
  readonly explanation?: string;
}

/** One offer for each text, the first. */
export function once(offers: readonly Offer[]): readonly Offer[] {
  const seen = new Set<string>();
  return offers.filter(({ text }) => {
    if (text === '' || seen.has(text)) return false;
    seen.add(text);
    return true;
  });
}
