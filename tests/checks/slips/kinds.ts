import type { Random } from './random.ts';
import { entriesOf, notationOf, replaced, valuesAt, type Subject } from './place.ts';

/** One way in which a hand slips; nothing where the note gives no occasion for it. */
export interface SlipKind {
  readonly name: string;
  readonly make: (note: Subject, random: Random) => string | undefined;
}

/** Changes one of the values at these paths. */
function change(
  name: string,
  paths: readonly string[],
  to: (text: string, random: Random) => string | undefined,
): SlipKind {
  return {
    name,
    make: (note, random) => {
      const value = random.pick(
        valuesAt(note, ...paths).filter(({ style }) => style !== 'literal' && style !== 'folded'),
      );
      const text = value === undefined ? undefined : to(value.field.text, random);
      return value === undefined || text === undefined ? undefined : replaced(note, value.field.span, text);
    },
  };
}

const swapped = (text: string, at: number): string =>
  text.slice(0, at) + (text[at + 1] ?? '') + (text[at] ?? '') + text.slice(at + 2);

/** Two letters change places, or one is lost. */
function misspelt(text: string, random: Random): string | undefined {
  const at = 1 + random.below(Math.max(1, text.length - 3));
  if (!/^[a-z]{2}$/u.test(text.slice(at, at + 2))) return undefined;
  const wrong = random.below(2) === 0 ? swapped(text, at) : text.slice(0, at) + text.slice(at + 1);
  return wrong === text ? undefined : wrong;
}

const sides = [
  'eye',
  'diagnosis.eye',
  'plan.eye',
  'preop.biometry.eye',
  'safety.consent.eye',
  'safety.site-marked',
  'safety.lens-verified.eye',
];

const otherSide = (text: string): string | undefined => ({ right: 'left', left: 'right' })[text];

const flipped = (text: string): string | undefined => {
  const sign = text.startsWith('-') ? '+' : '-';
  return Math.abs(Number.parseFloat(text)) >= 1 ? `${sign}${text.replace(/^[+-]/u, '')}` : undefined;
};

const asked = [
  'start',
  'finish',
  'urgency',
  'procedure',
  'patient.allergies',
  'patient.born',
  'diagnosis.cataract',
  'comorbidity',
  'preop.acuity',
  'preop.biometry.axial-length',
  'preop.biometry.k1',
  'plan.target',
  'plan.lens.power',
  'safety.time-out',
  'safety.sign-out',
  'safety.consent',
  'safety.lens-verified',
  'anaesthesia.kinds',
  'antisepsis',
  'capsulotomy.diameter',
  'capsule-state.posterior',
  'capsule-state.vitreous',
  'lens.power',
  'lens.placed',
  'drugs',
  'closure.leak-test',
  'closure.sutures',
  'complications',
  'findings',
  'specimens',
  'after-care.instructions',
  'reviews',
  'signed',
];

export const slipKinds: readonly SlipKind[] = [
  change('the other side', sides, otherSide),
  change('the other side', sides, otherSide),
  {
    name: 'a word misspelt',
    make: (note, random) => {
      const value = random.pick(
        valuesAt(note).filter((one) => notationOf(note, one)?.words !== undefined && one.field.text.length > 5),
      );
      const wrong = value === undefined ? undefined : misspelt(value.field.text, random);
      return value === undefined || wrong === undefined ? undefined : replaced(note, value.field.span, wrong);
    },
  },
  {
    name: 'a field misspelt',
    make: (note, random) => {
      const entry = random.pick(entriesOf(note).filter(({ key }) => key.length > 5));
      const wrong = entry === undefined ? undefined : misspelt(entry.key, random);
      return entry === undefined || wrong === undefined ? undefined : replaced(note, entry.keySpan, wrong);
    },
  },
  {
    name: 'a field forgotten',
    make: (note, random) => {
      const entry = random.pick(entriesOf(note).filter(({ path }) => asked.includes(path)));
      return entry === undefined ? undefined : replaced(note, entry.lines, '');
    },
  },
  {
    name: 'a field forgotten',
    make: (note, random) => {
      const entry = random.pick(entriesOf(note).filter(({ path }) => asked.includes(path)));
      return entry === undefined ? undefined : replaced(note, entry.lines, '');
    },
  },
  {
    name: 'nothing behind the field',
    make: (note, random) => {
      const entry = random.pick(
        entriesOf(note).filter(({ value }) => value?.kind === 'scalar' && value.style === 'plain'),
      );
      return entry?.value == null ? undefined : replaced(note, entry.value.span, '');
    },
  },
  {
    name: 'a field written twice',
    make: (note, random) => {
      const entry = random.pick(
        entriesOf(note).filter(({ value, path }) => value?.kind === 'scalar' && !path.includes('.')),
      );
      return entry === undefined
        ? undefined
        : replaced(
            note,
            { start: entry.lines.end, end: entry.lines.end },
            note.text.slice(entry.lines.start, entry.lines.end),
          );
    },
  },
  {
    name: 'a decimal comma',
    make: (note, random) => {
      const value = random.pick(
        valuesAt(note).filter((one) => notationOf(note, one)?.unit !== undefined && /\d\.\d/u.test(one.field.text)),
      );
      return value === undefined ? undefined : replaced(note, value.field.span, value.field.text.replace('.', ','));
    },
  },
  {
    name: 'the wrong unit',
    make: (note, random) => {
      const value = random.pick(
        valuesAt(note).filter(
          (one) => / (?:mm|D|mmHg|cm|mL|%)$/u.test(one.field.text) && (notationOf(note, one)?.unit ?? '') !== '',
        ),
      );
      const unit = random.pick(['kg', 'min', 'mg']);
      return value === undefined
        ? undefined
        : replaced(note, value.field.span, value.field.text.replace(/ \S+$/u, ` ${unit}`));
    },
  },
  change(
    'the decimal point lost',
    [
      'preop.biometry.axial-length',
      'preop.biometry.chamber-depth',
      'preop.biometry.lens-thickness',
      'preop.biometry.white-to-white',
      'capsulotomy.diameter',
      'incisions.width',
      'lens.optic-diameter',
    ],
    (text) => (/\.\d*[1-9]|\.0/u.test(text) ? text.replace('.', '') : undefined),
  ),
  change('the sign turned', ['plan.lens.power', 'lens.power', 'plan.predicted', 'safety.lens-verified.power'], flipped),
  change('another power', ['lens.power', 'plan.lens.power', 'safety.lens-verified.power'], (text) =>
    text.replace(/\d+/u, (digits) => String(Number(digits) + 2)),
  ),
  change('another model', ['lens.model', 'plan.lens.model', 'safety.lens-verified.model'], (text) => `${text}0`),
  change('an axis a quarter turn off', ['preop.biometry.k1', 'preop.biometry.k2'], (text) =>
    text.replace(/@ (\d+)/u, (_, axis: string) => `@ ${(Number(axis) + 90) % 180 || 180}`),
  ),
  change('an axis mistyped', ['preop.biometry.k1', 'preop.biometry.k2'], (text) =>
    text.replace(/@ (\d+)/u, (_, axis: string) => `@ ${(Number(axis) + 30) % 180 || 180}`),
  ),
  change('another year', ['date', 'safety.consent.date'], (text) =>
    text.replace(/^\d{4}/u, (year) => String(Number(year) + 1)),
  ),
  change('another year', ['date', 'preop.biometry.date'], (text) =>
    text.replace(/^\d{4}/u, (year) => String(Number(year) - 2)),
  ),
  change('an expiry long past', ['lens.expiry'], (text) => text.replace(/^\d{4}/u, (year) => String(Number(year) - 9))),
  change('another hour', ['safety.time-out.time', 'start', 'finish', 'safety.sign-out.time'], (text, random) => {
    const hour = (Number(text.slice(0, 2)) + (random.below(2) === 0 ? 5 : 19)) % 24;
    return `${String(hour).padStart(2, '0')}${text.slice(2)}`;
  }),
  change('ten times the dose', ['drugs.dose'], (text) =>
    /^1 mg|^0\.5 mg/u.test(text) ? text.replace(/^\S+/u, (amount) => String(Number(amount) * 10)) : undefined,
  ),
  {
    name: 'two digits of the serial number swapped',
    make: (note, random) => {
      if (valuesAt(note, 'lens.udi').length === 0) return undefined;
      const value = random.pick(valuesAt(note, 'lens.serial'));
      const at = value?.field.text.search(/(\d)(?!\1)\d/u) ?? -1;
      if (value === undefined || at < 0) return undefined;
      return replaced(note, value.field.span, `"${swapped(value.field.text, at)}"`);
    },
  },
  change('a placeholder', ['findings', 'indication', 'after-care.instructions'], () => 'TBC'),
  change(
    'a name in the text',
    ['findings', 'after-care.instructions'],
    (text) => `${text.replaceAll('"', '')} (Mrs Elm)`,
  ),
  change('the capsule torn, by a slip', ['capsule-state.posterior'], (text) =>
    text === 'intact' ? 'torn' : undefined,
  ),
  change('nasal for temporal', ['incisions.at'], (text) => ({ temporal: 'nasal', '0°': '180°', '180°': '0°' })[text]),
  change('a person mistyped', ['safety.time-out.by', 'anaesthesia.given-by'], (text) => `${text}1`),
  change('the wound leaks', ['closure.leak-test'], () => 'leak'),
  change('a capsulotomy wider than the optic', ['capsulotomy.diameter'], (text) => text.replace(/^\d/u, '6')),
  {
    name: 'the colon forgotten',
    make: (note, random) => {
      const entry = random.pick(
        entriesOf(note).filter(({ value, path }) => value?.kind === 'scalar' && !path.includes('.')),
      );
      return entry === undefined
        ? undefined
        : replaced(note, { start: entry.keySpan.end, end: entry.keySpan.end + 1 }, '');
    },
  },
];
