/** How units are spoken after a number. */
export interface SpokenUnit {
  readonly unit: string;
  /** Patterns of words; see phrase.ts. */
  readonly said: readonly string[];
  /** The singular used as an adjective before the thing it measures: "a five millimetre capsulorhexis". */
  readonly adjective?: readonly string[];
  /** What a recogniser makes of it. */
  readonly heard?: readonly string[];
}

export const spokenUnits: readonly SpokenUnit[] = [
  {
    unit: 'mm',
    said: ['millimetres', 'mm', 'mms'],
    adjective: ['millimetre'],
    heard: ['milli metres', 'milli metre', 'millie metre', 'millie metres', 'mill a metre'],
  },
  {
    unit: 'cm',
    said: ['centimetres', 'cm', 'cms'],
    adjective: ['centimetre'],
    heard: ['centi metres', 'centi metre', 'sent a metres'],
  },
  { unit: 'µm', said: ['microns', 'micron', 'micrometres', 'micrometre', 'um'] },
  {
    unit: 'mmHg',
    said: [
      '(millimetres|millimetre) of mercury',
      'mmhg',
      'mm hg',
      '(millimetres|millimetre) [of] mercury',
      'mm [of] mercury',
    ],
  },
  { unit: 'cmH2O', said: ['(centimetres|centimetre|cm) [of] water', 'cmh 2 o', 'cm h 2 o'] },
  {
    unit: 'D',
    said: ['dioptres', 'dioptre', 'd', 'ds', 'dpt'],
    heard: [
      'die opters',
      'die opter',
      'dye opters',
      'dye opter',
      'die optus',
      'die opt as',
      'diopt as',
      'the opters',
      'di opters',
      'di opter',
    ],
  },
  { unit: '°', said: ['degrees', 'deg', 'degs'], adjective: ['degree'] },
  { unit: '%', said: ['percent', 'per cent'] },
  { unit: 'mL', said: ['millilitres', 'millilitre', 'ml', 'mls', 'mil', 'mils', 'mill', 'mills', 'cc', 'ccs', 'c c'] },
  {
    unit: 'mL/min',
    said: ['(millilitres|millilitre|ml|mls|mil|mils|mill|mills|cc|ccs) (per|a|each|/) (minute|min)', 'mlmin', 'cc min'],
  },
  {
    unit: 'mg',
    said: ['milligrams', 'milligram', 'mg', 'mgs', 'milli grams', 'milli gram'],
    heard: ['milly grams', 'milly gram'],
  },
  { unit: 'µg', said: ['micrograms', 'microgram', 'mcg', 'ug'] },
  { unit: 's', said: ['seconds', 'second', 'secs', 'sec', 's'] },
  { unit: 'min', said: ['minutes', 'minute', 'mins', 'min'] },
  { unit: 'h', said: ['hours', 'hour', 'hrs', 'hr'] },
  { unit: 'day', said: ['days', 'day'] },
  { unit: 'week', said: ['weeks', 'week', '/ 52'] },
  { unit: 'month', said: ['months', 'month', '/ 12'] },
  { unit: 'year', said: ['years', 'year'] },
  { unit: 'clock hours', said: ['clock hours', 'clock hour', 'clock (hrs|hr)'] },
  {
    unit: "o'clock",
    said: ['oclock [(position|positions|hour|meridian)]', 'o clock [(position|positions)]', 'o  clock'],
    heard: ['a clock', 'oh clock'],
  },
];
