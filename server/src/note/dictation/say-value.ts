import type { SlotName, SpokenAmount, SpokenField, SpokenForm } from '@sideport/schemas/spoken/phrase.ts';
import { spokenUnits } from '@sideport/schemas/spoken/units.ts';
import { sayDate, sayDecimal, sayDigits, sayInteger } from './say-number.ts';
import { firstForm, firstWords } from './say-pattern.ts';

/** How a value of a field is said, and whether its subject must be named before it; undefined: the table cannot say it. */
export interface SaidValue {
  readonly words: string;
  readonly needsSubject: boolean;
}

/** A value in the words of the phrase table. */
export function sayValue(field: SpokenField, value: string): SaidValue | undefined {
  return sayTerm(field, value) ?? sayAmount(field, value) ?? sayForm(field, value) ?? sayComposed(field, value);
}

function sayTerm(field: SpokenField, value: string): SaidValue | undefined {
  for (const known of field.values ?? []) {
    if (known.implied === true || known.as !== undefined) continue;
    if (known.value === value) return { words: firstWords(known.said[0]), needsSubject: known.bound === true };
    if (known.denied === value && known.denies !== true)
      return { words: `no ${firstWords(known.said[0])}`, needsSubject: known.bound === true };
  }
  return undefined;
}

const quantity = /^([+-]?\d+(?:\.\d+)?)\s*(.*)$/u;

function sayAmount(field: SpokenField, value: string): SaidValue | undefined {
  const match = quantity.exec(value);
  if (match?.[1] === undefined) return undefined;
  const unit = match[2] ?? '';
  const amount = field.amounts?.find(
    (one) => one.unit === unit || (one.unit === 'clock hours' && unit === 'clock hour'),
  );
  const number =
    amount === undefined
      ? undefined
      : sayDecimal(amount.signed === true && /^\d/u.test(match[1]) ? `+${match[1]}` : match[1]);
  if (amount === undefined || number === undefined) return undefined;
  const name = firstWords(field.called?.[0]);
  const led = leadsWithAt(amount) && name === '' ? 'at ' : '';
  return {
    words: [name, `${led}${number}`, unitWords(amount.unit, number)].filter(Boolean).join(' '),
    needsSubject: true,
  };
}

function leadsWithAt(amount: SpokenAmount): boolean {
  return amount.unit === '°' || amount.unit === "o'clock";
}

function unitWords(unit: string, number: string): string {
  if (unit === "o'clock") return unit;
  const known = spokenUnits.find((one) => one.unit === unit);
  const single = /^(?:plus |minus )?one$/u.test(number) ? (known?.adjective?.[0] ?? known?.said[1]) : undefined;
  return firstWords(single ?? known?.said[0]);
}

function sayForm(field: SpokenField, value: string): SaidValue | undefined {
  for (const form of field.forms ?? []) {
    const words = form.implied === true || form.corrected === true ? undefined : formWords(form, value);
    if (words !== undefined) return { words, needsSubject: form.bound === true };
  }
  return undefined;
}

function formWords(form: SpokenForm, value: string): string | undefined {
  const [before = '', after = ''] = (form.write ?? '{}').split('{}');
  if (!value.startsWith(before) || !value.endsWith(after) || value.length <= before.length + after.length)
    return undefined;
  const held = value.slice(before.length, value.length - after.length);
  const steps = firstForm(form.said[0] ?? '');
  const said = steps.map((step) => ('word' in step ? step.word : sayInSlot(step.slot, held)));
  return said.includes(undefined) ? undefined : said.filter((word) => word !== ',').join(' ');
}

const sayers: Readonly<Record<SlotName, (held: string) => string | undefined>> = {
  number: sayDecimal,
  count: (held) => (/^\d{1,2}$/u.test(held) ? sayInteger(Number(held)) : undefined),
  pair: (held) => sayTwo(/^(\d+(?:\.\d+)?)\/(\d+(?:\.\d+)?)$/u.exec(held)),
  gauge: (held) => (/^\d+-0$/u.test(held) ? `${sayInteger(Number.parseInt(held, 10))} zero` : undefined),
  date: sayDate,
  serial: (held) => (/^[\dB-NP-Z]+$/u.test(held) ? sayDigits(held) : undefined),
  duration: (held) => sayLength(/^(\d{1,3}) ((?:day|week|month|year)s?)$/u.exec(held)),
  frequency: (held) => (/^\d{1,2}$/u.test(held) ? `${sayInteger(Number(held))} times a day` : undefined),
  clock: (held) => sayAt(/^(\d{1,2}) o'clock$/u.exec(held)),
  minutes: () => undefined,
  place: (held) => (/^(?:supero|infero)?(?:temporal|nasal)$|^(?:super|infer)ior$/u.test(held) ? held : undefined),
};

function sayInSlot(slot: SlotName, held: string): string | undefined {
  return sayers[slot](held);
}

function sayTwo(match: RegExpExecArray | null): string | undefined {
  const [first, second] = [sayDecimal(match?.[1] ?? ''), sayDecimal(match?.[2] ?? '')];
  return first === undefined || second === undefined ? undefined : `${first} ${second}`;
}

function sayLength(match: RegExpExecArray | null): string | undefined {
  return match === null ? undefined : `${sayInteger(Number(match[1]))} ${match[2]}`;
}

function sayAt(match: RegExpExecArray | null): string | undefined {
  return match === null ? undefined : `${sayInteger(Number(match[1]))} o'clock`;
}

/** Values of several parts, with what stands between them in the note and in speech. */
const compositions: readonly {
  readonly path: RegExp;
  readonly between: string;
  readonly said: string;
  readonly unit?: string;
}[] = [
  { path: /\.dose$/u, between: ' in ', said: ' in ' },
  { path: /\.k[12]$/u, between: ' @ ', said: ' at ', unit: '°' },
  { path: /\.regimen$/u, between: ' for ', said: ' for ' },
];

function sayComposed(field: SpokenField, value: string): SaidValue | undefined {
  const composition = compositions.find(({ path }) => path.test(field.path));
  const [first, second, more] = value.split(composition?.between ?? '\n');
  if (composition === undefined || first === undefined || second === undefined || more !== undefined) return undefined;
  const before = sayAmount(field, first) ?? sayForm(field, first);
  const after =
    sayAmount({ ...field, called: [] }, `${second}${composition.unit ?? ''}`) ?? sayForm(field, `for ${second}`);
  if (before === undefined || after === undefined) return undefined;
  const words = after.words.replace(/^(?:at|for) /u, '');
  return { words: `${before.words}${composition.said}${words}`, needsSubject: true };
}
