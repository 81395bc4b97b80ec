import type { ComputedData, ComputedValue } from './computed.ts';
import { displayData } from './display.ts';

/** Inputs are shown as they entered, without the rounding of results and without digits that only arithmetic made. */
const exact = (value: number): string => String(Number(value.toPrecision(6)));

function inWords(value: ComputedData, unit: string): string {
  if (typeof value === 'number')
    return unit === '' || unit === '°' ? `${exact(value)}${unit}` : `${exact(value)} ${unit}`;
  if (value === null) return 'not recorded';
  return displayData(value, unit);
}

/** What a computed value rests on, one phrase an input: `axial length 29.6 mm`, `k1 43.25 D @ 5°`. */
export function inputsInWords({ inputs, inputUnits }: ComputedValue): readonly string[] {
  return Object.entries(inputs).map(
    ([name, value]) => `${name.replaceAll('-', ' ')} ${inWords(value, inputUnits[name] ?? '')}`,
  );
}
