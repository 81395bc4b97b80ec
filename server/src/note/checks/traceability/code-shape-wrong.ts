import { textCheck, type About } from '../check.ts';

/** How a code of each system looks; what it means is the coder’s. */
const shapes: Readonly<Record<string, { readonly shape: RegExp; readonly words: string }>> = {
  'ICD-10-CM': {
    shape: /^[A-Z]\d[0-9A-Z](?:\.?[0-9A-Z]{1,4})?$/u,
    words: 'a letter, two signs and up to four more, such as H25.11',
  },
  'ICD-10-PCS': { shape: /^[0-9A-HJ-NP-Z]{7}$/u, words: 'seven signs without I and O, such as 08RJ3JZ' },
  'ICD-10': {
    shape: /^[A-Z]\d{2}(?:\.?\d{1,2})?[DA*†]?$/u,
    words: 'a letter and two digits with up to two more, such as H25.1',
  },
  'OPCS-4': { shape: /^[A-HJ-NP-Z]\d{2}\.?\d$/u, words: 'a letter, two digits and one more, such as C71.2' },
  LOINC: { shape: /^\d{1,7}-\d$/u, words: 'digits, a hyphen and a check digit, such as 11504-8' },
  CPT: { shape: /^\d{4}[0-9A-Z]$/u, words: 'five signs' },
  'SNOMED CT': { shape: /^\d{6,18}$/u, words: 'six to eighteen digits' },
};

export const codeShapeWrong = textCheck({
  id: 'code-shape-wrong',
  group: 'traceability',
  summary: 'A code does not look like a code of its system.',
  severity: 'error',
  allowable: true,
  run: (reading, say) => {
    if (reading.kind !== 'operation' && reading.kind !== 'follow-up') return;
    for (const { system, code } of reading.note.codes?.items ?? []) {
      const known = system === undefined ? undefined : shapes[system.value];
      if (known === undefined || code === undefined || known.shape.test(code.value.trim())) continue;
      say({ at: code, message: `Code: ${code.text} is not a code of ${system?.value}: ${known.words}.` });
    }
  },
});

export const aboutCodeShapeWrong: About = () => ({
  why: 'It is a typing slip or stands under the wrong system; an import will refuse it.',
  whatToDo: 'Correct the code or the system.',
  source:
    'form of the codes in each system (ICD-10-CM, ICD-10-PCS, ICD-10, OPCS-4, LOINC; CPT and SNOMED CT from memory)',
  since: '1.0',
  faulty: { note: 'codes:\n  - system: OPCS-4\n    code: 08RJ3JZ' },
  sound: { note: 'codes:\n  - system: OPCS-4\n    code: C71.2' },
});
