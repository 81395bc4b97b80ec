import { calculation } from '../calculation.ts';
import { optional, part, quantity, shaped, type Field } from '../fields.ts';
import { found, refused, type Outcome } from '../outcome.ts';
import { CITATIONS } from '../sources.ts';
import { SCHEME, type AcuityCategory, type AcuityScheme } from './schemes.ts';

/** An acuity as it was written. */
export type Acuity =
  | {
      readonly kind: 'fraction';
      readonly numerator: number;
      readonly denominator: number;
      /** Letters read beyond the line (+) or missed on it (-). */
      readonly lettersMore?: number;
    }
  | { readonly kind: 'decimal'; readonly decimal: number }
  | { readonly kind: 'logmar'; readonly logmar: number }
  | { readonly kind: 'letters'; readonly letters: number };

/** Five letters are a line of 0.1 logMAR. */
const LETTERS_PER_LOG_UNIT = 50;
const DECIMAL = quantity('decimal acuity', '', 0.001, 4);
const PARTS: Readonly<Record<Acuity['kind'], Readonly<Record<string, Field>>>> = {
  fraction: {
    numerator: quantity('numerator', '', 0.1, 40),
    denominator: quantity('denominator', '', 0.5, 40_000),
    lettersMore: optional(quantity('letters beyond the line', '', -9, 9)),
  },
  decimal: { decimal: DECIMAL },
  logmar: { logmar: quantity('acuity', 'logMAR', -0.6, 3) },
  letters: { letters: quantity('letters read', 'letters', 0, 100) },
};
const topic = 'Acuity';
const definitionSource = { citation: CITATIONS.holladay2004, status: 'seen' } as const;

function decimalOf(acuity: Acuity): number {
  if (acuity.kind === 'fraction')
    return (acuity.numerator / acuity.denominator) * 10 ** ((acuity.lettersMore ?? 0) / LETTERS_PER_LOG_UNIT);
  if (acuity.kind === 'decimal') return acuity.decimal;
  return acuity.kind === 'logmar' ? 10 ** -acuity.logmar : 10 ** ((acuity.letters - 85) / LETTERS_PER_LOG_UNIT);
}

const approximate = (acuity: Acuity): boolean =>
  acuity.kind === 'letters' || (acuity.kind === 'fraction' && (acuity.lettersMore ?? 0) !== 0);

const isKind = (kind: unknown): kind is Acuity['kind'] => typeof kind === 'string' && kind in PARTS;

const ACUITY = shaped('acuity', 'a fraction, a decimal, a logMAR value or ETDRS letters', (value) => {
  const kind = part(value, 'kind');
  if (!isKind(kind)) return 'acuity is missing';
  for (const [key, field] of Object.entries(PARTS[kind])) {
    const fault = field.fault(part(value, key));
    if (fault !== undefined) return fault;
  }
  if (kind !== 'fraction') return undefined;
  return DECIMAL.fault(Number(part(value, 'numerator')) / Number(part(value, 'denominator')));
});

export const acuityDecimal = calculation<{ acuity: Acuity }, number>({
  name: 'acuity-decimal',
  topic,
  definition: 'Acuity as a decimal.',
  inputs: { acuity: ACUITY },
  unit: '',
  domain: 'Decimal 0.001 to 4; letters 0 to 100.',
  method: 'numerator / denominator; 10^-logMAR; 10^((letters - 85) / 50)',
  source: definitionSource,
  example: { input: { acuity: { kind: 'fraction', numerator: 6, denominator: 18 } }, gives: 0.333333 },
  compute: ({ acuity }) => found(decimalOf(acuity)),
});

export const acuityLogmar = calculation<{ acuity: Acuity }, number>({
  name: 'acuity-logmar',
  topic,
  definition: 'Acuity as the logarithm of the minimum angle of resolution; 0 is 6/6, larger is worse.',
  inputs: { acuity: ACUITY },
  unit: 'logMAR',
  domain: 'Counting fingers and less have no logMAR of their own: a named scheme gives one.',
  method: '-log10(decimal), 0.02 less for each letter beyond the line; letters: (85 - letters) / 50',
  source: definitionSource,
  example: { input: { acuity: { kind: 'fraction', numerator: 6, denominator: 18 } }, gives: 0.477121 },
  compute: ({ acuity }) =>
    found(
      acuity.kind === 'logmar' ? acuity.logmar : -Math.log10(decimalOf(acuity)) + 0,
      approximate(acuity) ? [`Letters counted as 0.02 logMAR each, approximately (${CITATIONS.gregori2010}).`] : [],
    ),
});

/** logMAR of counting fingers, hand movements and light perception under a named scheme. */
export function acuityLogmarOfCategory(category: AcuityCategory, scheme: AcuityScheme): Outcome<number> {
  const { logmar, source, caution } = SCHEME[scheme];
  const value = logmar[category];
  if (value === undefined)
    return refused(`${category} has no logMAR in the scheme ${scheme}: it could not be measured`);
  return {
    ok: true,
    value,
    unit: 'logMAR',
    method: `${category} by the scheme ${scheme}`,
    domain: 'Counting fingers and less have no acuity of their own; never average them silently.',
    source,
    cautions: [caution],
  };
}

export const acuityLetters = calculation<{ acuity: Acuity }, number>({
  name: 'acuity-letters',
  topic,
  definition: 'Approximate ETDRS letter score.',
  inputs: { acuity: ACUITY },
  unit: 'letters',
  domain: 'From 0 letters (about 20/1000) up; below that the chart cannot score.',
  method: '85 + 50 log10(decimal)',
  source: { citation: CITATIONS.gregori2010, status: 'seen' },
  cautions: ['Approximate: a Snellen line is not a letter count.'],
  example: { input: { acuity: { kind: 'fraction', numerator: 6, denominator: 18 } }, gives: 61.143937 },
  compute: ({ acuity }) => {
    const letters = acuity.kind === 'letters' ? acuity.letters : 85 + 50 * Math.log10(decimalOf(acuity));
    return letters < 0 ? refused('worse than the chart can score (below 0 letters)') : found(letters);
  },
});

export const snellenDenominator = calculation<{ acuity: Acuity; numerator: number }, number>({
  name: 'snellen-denominator',
  topic,
  definition: 'Denominator of the Snellen fraction at a stated test distance.',
  inputs: { acuity: ACUITY, numerator: quantity('numerator (6 in metres, 20 in feet)', '', 0.5, 40) },
  unit: '',
  domain: 'The exact fraction, which need not be a line of the chart.',
  method: 'numerator / decimal',
  source: definitionSource,
  example: { input: { acuity: { kind: 'fraction', numerator: 6, denominator: 18 }, numerator: 20 }, gives: 60 },
  compute: ({ acuity, numerator }) => found(numerator / decimalOf(acuity)),
});
