/**
 * The units of a note: each with the spellings a person writes and, for units of the same kind, the factor to
 * the first of the family. Definitions of mm[Hg] and cm[H2O]: NIST SP 811, table B.8 (conventional values).
 */
interface UnitFamily {
  readonly units: Readonly<Record<string, { readonly factor: number; readonly spellings: readonly string[] }>>;
}

const families: readonly UnitFamily[] = [
  {
    units: {
      mm: { factor: 1, spellings: ['millimetre', 'millimetres', 'millimeter', 'millimeters'] },
      cm: { factor: 10, spellings: ['centimetre', 'centimetres', 'centimeter', 'centimeters'] },
      m: { factor: 1000, spellings: ['metre', 'metres', 'meter', 'meters'] },
      µm: { factor: 0.001, spellings: ['μm', 'um', 'micron', 'microns', 'micrometre', 'micrometres'] },
    },
  },
  { units: { D: { factor: 1, spellings: ['dioptre', 'dioptres', 'diopter', 'diopters', 'dpt', 'DS', 'DC'] } } },
  { units: { '°': { factor: 1, spellings: ['º', '˚', 'deg', 'degree', 'degrees'] } } },
  {
    units: {
      mmHg: { factor: 1, spellings: ['mm Hg', 'mm[Hg]', 'torr'] },
      cmH2O: { factor: 98.0665 / 133.322387415, spellings: ['cm H2O', 'cmH₂O', 'cm of water'] },
      kPa: { factor: 1000 / 133.322387415, spellings: [] },
    },
  },
  { units: { '%': { factor: 1, spellings: ['percent', 'per cent'] } } },
  {
    units: {
      s: { factor: 1, spellings: ['sec', 'secs', 'second', 'seconds'] },
      min: { factor: 60, spellings: ['mins', 'minute', 'minutes'] },
      h: { factor: 3600, spellings: ['hour', 'hours'] },
    },
  },
  {
    units: {
      day: { factor: 1, spellings: ['days', 'd'] },
      week: { factor: 7, spellings: ['weeks', 'wk'] },
    },
  },
  { units: { month: { factor: 1, spellings: ['months'] }, year: { factor: 12, spellings: ['years', 'y'] } } },
  {
    units: {
      mL: { factor: 1, spellings: ['ml', 'cc', 'millilitre', 'millilitres', 'milliliter', 'milliliters'] },
      µL: { factor: 0.001, spellings: ['μL', 'uL', 'µl', 'ul', 'microlitre', 'microlitres'] },
      L: { factor: 1000, spellings: ['l', 'litre', 'litres'] },
    },
  },
  { units: { 'mL/min': { factor: 1, spellings: ['ml/min', 'cc/min', 'mL per minute', 'ml per minute'] } } },
  {
    units: {
      mg: { factor: 1, spellings: ['milligram', 'milligrams'] },
      µg: { factor: 0.001, spellings: ['μg', 'ug', 'mcg', 'microgram', 'micrograms'] },
      g: { factor: 1000, spellings: ['gram', 'grams'] },
    },
  },
  {
    units: { '/mm²': { factor: 1, spellings: ['/mm2', 'cells/mm2', 'cells/mm²', 'per mm2', 'per square millimetre'] } },
  },
  { units: { 'clock hours': { factor: 1, spellings: ['clock hour', 'clock-hours'] } } },
  { units: { cycles: { factor: 1, spellings: [] } } },
];

interface KnownUnit {
  readonly unit: string;
  readonly family: UnitFamily;
  readonly factor: number;
}

const bySpelling = new Map<string, KnownUnit>();
for (const family of families) {
  for (const [unit, { factor, spellings }] of Object.entries(family.units)) {
    for (const spelling of [unit, ...spellings]) bySpelling.set(spelling, { unit, family, factor });
  }
}

/** The unit a person meant by a spelling, or undefined. Case counts first: mL and ML differ, Mm is no mm. */
export function unitOf(spelling: string): string | undefined {
  return known(spelling)?.unit;
}

/** How many of `to` one of `from` makes, or undefined when they measure different things. */
export function conversion(from: string, to: string): number | undefined {
  const a = known(from);
  const b = known(to);
  if (a === undefined || b === undefined || a.family !== b.family) return undefined;
  return a.factor / b.factor;
}

/** Every spelling understood where the field's own unit is `unit`: its own family. */
export function spellingsFor(unit: string): readonly string[] {
  const own = known(unit);
  if (own === undefined) return [unit];
  return Object.entries(own.family.units).flatMap(([name, { spellings }]) => [name, ...spellings]);
}

function known(spelling: string): KnownUnit | undefined {
  return bySpelling.get(spelling) ?? bySpelling.get(spelling.toLowerCase());
}
