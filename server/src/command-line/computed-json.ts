import type { ComputedNote } from '../note/computing/computed.ts';

/** The computed values of a note in the shape that scripts rely on. */
export function computedJson(file: string, { values, notComputed }: ComputedNote): string {
  const shape = {
    version: 1,
    file,
    values: values.map(({ name, value, unit, inputs, method, source, path, cautions }) => ({
      name,
      value,
      unit,
      inputs,
      method,
      source,
      path,
      cautions,
    })),
    notComputed: notComputed.map(({ name, because }) => ({ name, because })),
  };
  return `${JSON.stringify(shape, null, 2)}\n`;
}
