import { hibcCheckCharacter } from './check-digits.ts';
import { hibcSecondary, type Data } from './hibc-secondary.ts';
import { labelDate } from './label-dates.ts';
import type { LabelFault, LabelPart, LabelReading } from './reading.ts';

const PRIMARY = /^([A-Z][A-Z0-9]{3})([A-Z0-9]{1,18})(\d)$/;

/**
 * Reads a HIBC label: primary data, secondary data, or both joined by a slash.
 * Source: ANSI/HIBC supplier labelling standard (structure of the secondary data from memory of it).
 * @param from where the plus sign stands
 * @param year the year that two-digit years are counted from
 */
export function readHibc(text: string, from: number, year: number): LabelReading {
  const end = text.endsWith('*') && text.startsWith('*') ? text.length - 1 : text.length;
  const faults: LabelFault[] = [];
  // A printed caption shows a space as the check character by an underscore.
  const check = text.charAt(end - 1) === '_' ? ' ' : text.charAt(end - 1);
  const parts: LabelPart[] = [];
  let at = from + 1;
  const last = end - 1;
  for (const [index, piece] of text.slice(at, Math.max(at, last)).split('/').entries()) {
    const data: Data = { text: piece, start: at };
    if (index === 0 && !/^[$\d]/.test(piece)) parts.push(...primary(data, faults));
    else if (index === 0) parts.push(...hibcSecondary(withoutLink(data), year, faults));
    else
      parts.push(
        ...(/^[$\d]/.test(piece) && !isSupplement(piece)
          ? hibcSecondary(data, year, faults)
          : supplement(data, faults)),
      );
    at += piece.length + 1;
  }
  checkCharacter(text.slice(from, last), check, last, faults);
  parts.push({ kind: 'check', key: '', title: 'check character', value: check, span: { start: last, end } });
  return { standard: 'hibc', form: 'scanned', parts, faults };
}

/** Secondary data in a symbol of their own end with the primary symbol's check character as a link. */
const withoutLink = (data: Data): Data => ({ text: data.text.slice(0, -1), start: data.start });

function checkCharacter(body: string, check: string, place: number, faults: LabelFault[]): void {
  const expected = hibcCheckCharacter(body);
  if (expected === check) return;
  const because =
    expected === undefined
      ? 'it holds a character the standard does not know (capital letters, digits and - . $ / + % only)'
      : `its last character is "${check}", but the check character should be "${expected}"`;
  faults.push({
    fault: expected === undefined ? 'label-value-character' : 'label-check-digit',
    severity: 'error',
    message: `The label does not pass its check: ${because}. Compare it with the box, or scan it again.`,
    span: { start: place, end: place + 1 },
  });
}

function primary(data: Data, faults: LabelFault[]): readonly LabelPart[] {
  const found = PRIMARY.exec(data.text);
  if (!found) {
    faults.push({
      fault: 'label-value-length',
      severity: 'error',
      message: `"${data.text}" is not a maker's code of a letter and three characters, a product number of 1 to 18 characters and a unit digit.`,
      span: { start: data.start, end: data.start + data.text.length },
    });
    return [];
  }
  const [, labeller = '', product = '', unit = ''] = found;
  const at = data.start;
  const next = at + labeller.length;
  return [
    {
      kind: 'device-identifier',
      key: '+',
      title: 'device number',
      value: data.text,
      span: { start: at, end: at + data.text.length },
    },
    { kind: 'labeller', key: '', title: "maker's code", value: labeller, span: { start: at, end: next } },
    {
      kind: 'other',
      key: '',
      title: 'product number',
      value: product,
      span: { start: next, end: next + product.length },
    },
    {
      kind: 'other',
      key: '',
      title: 'unit of measure',
      value: unit,
      span: { start: next + product.length, end: next + product.length + 1 },
    },
  ];
}

const SUPPLEMENT = /^(14D|16D|S|Q|L)(.*)$/;
const isSupplement = (piece: string): boolean => SUPPLEMENT.test(piece);

function supplement(data: Data, faults: LabelFault[]): readonly LabelPart[] {
  const [, key = '', value = data.text] = SUPPLEMENT.exec(data.text) ?? [];
  const span = { start: data.start + key.length, end: data.start + data.text.length };
  if (key === 'S') return [{ kind: 'serial', key, title: 'serial number', value, span }];
  if (key === 'Q') return [{ kind: 'quantity', key, title: 'quantity', value, span }];
  if (key !== '14D' && key !== '16D') return [{ kind: 'other', key, title: 'further data', value, span }];
  const title = key === '14D' ? 'expiry date' : 'production date';
  const kind = key === '14D' ? 'expiry' : 'made';
  const date = /^\d{8}$/.test(value)
    ? labelDate(Number(value.slice(0, 4)), Number(value.slice(4, 6)), Number(value.slice(6)))
    : { because: 'it is written as eight digits, year, month, day' };
  if ('date' in date) return [{ kind, key, title, value, span, date: date.date }];
  faults.push({
    fault: 'label-date',
    severity: 'error',
    message: `The ${title} ${value} is not a date: ${date.because}.`,
    span,
  });
  return [{ kind, key, title, value, span }];
}
