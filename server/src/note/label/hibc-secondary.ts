import { dayOfYearDate, fullYear, labelDate } from './label-dates.ts';
import type { LabelFault, LabelPart } from './reading.ts';

/** A stretch of the label with the place where it starts. */
export interface Data {
  readonly text: string;
  readonly start: number;
}

/** How the date behind a flag is written; flags 0 and 1 are themselves the first digit of a month. */
const DATE_FORMS: Readonly<Record<string, string>> = {
  '2': 'MMDDYY',
  '3': 'YYMMDD',
  '4': 'YYMMDDHH',
  '5': 'YYJJJ',
  '6': 'YYJJJHH',
  '7': '',
};

/** Reads the lot or serial number, with the quantity and expiry date in front of it. */
export function hibcSecondary(data: Data, year: number, faults: LabelFault[]): readonly LabelPart[] {
  const [lead = ''] = /^(\$\$\+|\$\$|\$\+|\$)?/.exec(data.text) ?? [];
  const parts: LabelPart[] = [];
  let at = lead.length;
  if (lead.startsWith('$$')) {
    const quantity = /^(?:8(\d{2})|9(\d{5}))/.exec(data.text.slice(at));
    if (quantity) {
      const value = quantity[1] ?? quantity[2] ?? '';
      const start = data.start + at + 1;
      parts.push({ kind: 'quantity', key: lead, title: 'quantity', value, span: { start, end: start + value.length } });
      at += quantity[0].length;
    }
    const flag = data.text.charAt(at);
    const form = flag === '0' || flag === '1' ? 'MMYY' : DATE_FORMS[flag];
    if (form) {
      if (form !== 'MMYY') at++;
      parts.push(
        ...datePart({ text: data.text.slice(at, at + form.length), start: data.start + at }, form, lead, year, faults),
      );
      at += form.length;
    } else if (form === '') at++;
  } else if (lead === '') {
    parts.push(...datePart({ text: data.text.slice(0, 5), start: data.start }, 'YYJJJ', lead, year, faults));
    at = 5;
  }
  const serial = lead.endsWith('+');
  const value = data.text.slice(at);
  const start = data.start + Math.min(at, data.text.length);
  return [
    ...parts,
    {
      kind: serial ? 'serial' : 'lot',
      key: lead,
      title: serial ? 'serial number' : 'lot',
      value,
      span: { start, end: start + value.length },
    },
  ];
}

function datePart(data: Data, form: string, key: string, year: number, faults: LabelFault[]): readonly LabelPart[] {
  const span = { start: data.start, end: data.start + data.text.length };
  const base = { kind: 'expiry', key, title: 'expiry date', value: data.text, span } as const;
  const date = readDate(data.text, form, year);
  if ('date' in date) return [{ ...base, date: date.date }];
  faults.push({
    fault: 'label-date',
    severity: 'error',
    message: `The expiry date ${data.text} is not a date: ${date.because}. It is written ${form}.`,
    span,
  });
  return [base];
}

function readDate(text: string, form: string, year: number): { date: string } | { because: string } {
  if (text.length !== form.length || !/^\d+$/.test(text)) return { because: `it needs ${form.length} digits` };
  const field = (name: string): number | undefined => {
    const at = form.indexOf(name);
    return at < 0 ? undefined : Number(text.slice(at, at + name.length));
  };
  const full = fullYear(field('YY') ?? 0, year);
  const dayOfYear = field('JJJ');
  if (dayOfYear !== undefined) return dayOfYearDate(full, dayOfYear);
  return labelDate(full, field('MM') ?? 0, field('DD') ?? 0);
}
