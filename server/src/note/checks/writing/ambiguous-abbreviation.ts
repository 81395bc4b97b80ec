import { textCheck, type About } from '../check.ts';
import { walk } from '../support/values.ts';

/** Abbreviations that are read in two ways, with both readings. */
const readings: Readonly<Record<string, string>> = {
  OD: 'the right eye, or once daily',
  OS: 'the left eye, or by mouth',
  OU: 'both eyes, or a slip for OD',
  AS: 'the left ear, or the left eye',
  AU: 'both ears, or both eyes',
  QD: 'daily, or four times a day',
  QOD: 'every other day, or daily',
  BD: 'twice daily, or bedtime',
  HS: 'at bedtime, or half strength',
  MS: 'morphine, magnesium, or multiple sclerosis',
  PCR: 'posterior capsule rupture, or a laboratory test',
};

const SHAPE = /(?<![A-Za-z0-9-])(?:OD|OS|OU|AS|AU|QD|QOD|BD|HS|MS|PCR|IU|U)(?![A-Za-z0-9-])/gu;

export const ambiguousAbbreviation = textCheck({
  id: 'ambiguous-abbreviation',
  group: 'writing',
  summary: 'An abbreviation in the text can be read in two ways.',
  severity: 'warning',
  allowable: true,
  run: (reading, say) => {
    for (const { field } of walk(reading).prose) {
      const raw = reading.text.slice(field.span.start, field.span.end);
      for (const match of raw.matchAll(SHAPE)) {
        const start = field.span.start + match.index;
        const meaning = readings[match[0]] ?? 'units, or a zero';
        say({
          at: { span: { start, end: start + match[0].length }, key: null, path: field.path },
          message: `“${match[0]}” can mean ${meaning}. Write the words.`,
        });
        break;
      }
    }
  },
});

export const aboutAmbiguousAbbreviation: About = () => ({
  why: '“OD” has been read as the right eye and as once daily; “U” as a zero.',
  whatToDo: 'Write the words.',
  source: 'ISMP List of Error-Prone Abbreviations; Joint Commission “Do Not Use” list (both from memory)',
  since: '1.0',
  faulty: { note: 'after-care:\n  instructions: shield at night, drops OD' },
  sound: { note: 'after-care:\n  instructions: shield at night, drops once daily' },
});
