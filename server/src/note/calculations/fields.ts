/** One input of a calculation: what it is called, its unit, the range it is accepted in. */
export interface Field {
  readonly label: string;
  readonly unit: string;
  /** The accepted range in words. */
  readonly range: string;
  /** Says what is wrong with a value, or nothing. */
  fault: (value: unknown) => string | undefined;
}

/** A number as a message writes it: no digits that only the arithmetic put there. */
const written = (value: number): string => String(Number(value.toPrecision(6)));
const withUnit = (value: number, unit: string): string => (unit === '' ? written(value) : `${written(value)} ${unit}`);
const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);

/** A number with a unit, accepted from `from` to `to`, both included. */
export function quantity(label: string, unit: string, from: number, to: number): Field {
  const range = `${from} to ${withUnit(to, unit)}`;
  return {
    label,
    unit,
    range,
    fault: (value) => {
      if (!isNumber(value)) return `${label} is not a number`;
      return value < from || value > to
        ? `${label} ${withUnit(value, unit)} is outside ${range}, the range this is computed for`
        : undefined;
    },
  };
}

/** A direction in degrees on the dial; any turn is accepted and brought into one circle. */
export function angle(label: string): Field {
  return quantity(label, '°', -360, 720);
}

/** A part of a value that may not have the shape it should have. */
export function part(value: unknown, key: string): unknown {
  return typeof value === 'object' && value !== null ? Reflect.get(value, key) : undefined;
}

/** Examines the axis of a cylinder: none is right only where there is no cylinder. Made once a field: it is called often. */
function axisField(label: string): (size: unknown, axis: unknown) => string | undefined {
  const field = angle(`the axis of ${label}`);
  return (size, axis) => {
    if (axis !== null) return field.fault(axis);
    return size === 0 ? undefined : `${label} has a cylinder but no axis`;
  };
}

/** A cylinder with its axis. */
export function vector(label: string, most = 20): Field {
  const size = quantity(`the magnitude of ${label}`, 'D', 0, most);
  const axis = axisField(label);
  return {
    label,
    unit: 'D @ °',
    range: `magnitude 0 to ${most} D`,
    fault: (value) => size.fault(part(value, 'magnitude')) ?? axis(part(value, 'magnitude'), part(value, 'axis')),
  };
}

/** A refraction in plus- or minus-cylinder form. */
export function refraction(label: string): Field {
  const sphere = quantity(`the sphere of ${label}`, 'D', -40, 25);
  const cylinder = quantity(`the cylinder of ${label}`, 'D', -15, 15);
  const axis = axisField(label);
  return {
    label,
    unit: 'D x °',
    range: 'sphere -40 to 25 D, cylinder -15 to 15 D',
    fault: (value) =>
      sphere.fault(part(value, 'sphere')) ??
      cylinder.fault(part(value, 'cylinder')) ??
      axis(part(value, 'cylinder'), part(value, 'axis')),
  };
}

/** One of a few words or values. */
export function choice(label: string, values: readonly (string | number | boolean | null)[]): Field {
  return {
    label,
    unit: '',
    range: values.map(String).join(', '),
    fault: (value) =>
      values.some((known) => known === value)
        ? undefined
        : `${label} is ${String(value)}; expected one of ${values.join(', ')}`,
  };
}

/** A whole number. */
export function whole(label: string, from: number, to: number): Field {
  const field = quantity(label, '', from, to);
  return {
    ...field,
    fault: (value) =>
      field.fault(value) ?? (Number.isInteger(value) ? undefined : `${label} ${String(value)} is not a whole number`),
  };
}

/** A list, every entry of which is examined. */
export function listOf(label: string, range: string, fault: (entry: unknown) => string | undefined): Field {
  return shaped(label, range, (value) => {
    if (!Array.isArray(value)) return `${label} are missing`;
    for (const entry of value) {
      const found = fault(entry);
      if (found !== undefined) return found;
    }
    return undefined;
  });
}

/** An input that may be left out. */
export function optional(field: Field): Field {
  return {
    ...field,
    range: `${field.range}; may be left out`,
    fault: (value) => (value === undefined ? undefined : field.fault(value)),
  };
}

/** An input with a shape of its own, examined by `fault`. */
export function shaped(label: string, range: string, fault: (value: unknown) => string | undefined): Field {
  return { label, unit: '', range, fault };
}
