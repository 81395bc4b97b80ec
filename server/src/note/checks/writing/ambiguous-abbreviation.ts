import { textCheck, type About } from '../check.ts';
import { proseOf } from '../support/prose.ts';

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

const SHAPE = /\b(?:OD|OS|OU|AS|AU|QD|QOD|BD|HS|MS|PCR|IU|U)\b/gu;
/** Part of a reference, a model or a compound: U-12, AS-7. */
const JOINED = /[\w-]/u;

export const ambiguousAbbreviation = textCheck({
  id: 'ambiguous-abbreviation',
  group: 'writing',
  summary: 'An abbreviation in the text can be read in two ways.',
  severity: 'warning',
  allowable: true,
  run: (reading, say) => {
    const { joined, locate } = proseOf(reading);
    for (const match of joined.matchAll(SHAPE)) {
      const [abbreviation] = match;
      const end = match.index + abbreviation.length;
      if (JOINED.test(joined.charAt(match.index - 1)) || JOINED.test(joined.charAt(end))) continue;
      const found = locate(match.index, abbreviation.length);
      if (found === undefined) continue;
      say({
        at: { span: found.span, key: null, path: found.path },
        message: `“${abbreviation}” can mean ${readings[abbreviation] ?? 'units, or a zero'}. Write the words.`,
      });
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
