import type { Amendment } from '@sideport/schemas';
import type { CodeSuggestion, CodeSuggestions, NotCoded } from './suggestion.ts';

/** The fields that codes depend on, from their beginning. */
const CODED_FIELDS = [
  'eye',
  'procedure',
  'diagnosis.cataract',
  'lens.placed',
  'lens.power',
  'ring',
  'pupil-aid',
  'vitrectomy',
  'nucleus',
  'capsule-state',
  'complications',
  'patient.born',
  'date',
];

/** A field as codes name it: `codes[0].code` and `codes.0.code` are one. */
const plainPath = (path: string): string =>
  path
    .trim()
    .split(/[.[\]]+/u)
    .filter((step) => step !== '')
    .join('.');

const overlap = (a: string, b: string): boolean => a === b || a.startsWith(`${b}.`) || b.startsWith(`${a}.`);

/**
 * What is left of the suggestions of a note that was amended. They come from the note as it was signed: one that rests
 * on a changed field is withheld, and whatever a coder must read first is said.
 */
export function withoutAmended(codes: CodeSuggestions, amendments: readonly Amendment[]): CodeSuggestions {
  if (amendments.length === 0) return codes;
  const changed = amendments
    .flatMap(({ changes }) => changes?.items ?? [])
    .flatMap(({ field }) => (field ? [plainPath(field.value)] : []))
    .filter((path) => CODED_FIELDS.some((field) => overlap(path, field)));
  if (changed.some((path) => overlap(path, 'eye'))) {
    const why = 'an amendment changes the eye: codes have a side, and none is suggested for either';
    const notCoded = [{ what: 'the whole operation', why, fields: ['eye'] }];
    return { ...codes, suggestions: [], notCoded, compared: [] };
  }
  const touched = ({ because }: CodeSuggestion): readonly string[] => [
    ...new Set(
      because.map(({ field }) => field).filter((one) => changed.some((path) => overlap(plainPath(one), path))),
    ),
  ];
  const withheld = codes.suggestions.flatMap((one): NotCoded[] => {
    const fields = touched(one);
    if (fields.length === 0) return [];
    const why = `it would be suggested from ${fields.join(' and ')}, which an amendment changes: read the amendment and choose the code`;
    return [{ what: `${one.system} ${one.code}`, why, fields }];
  });
  return {
    ...codes,
    suggestions: codes.suggestions.filter((one) => touched(one).length === 0),
    notCoded: [...withheld, ...said(amendments, changed), ...codes.notCoded],
    compared: codes.compared.filter(
      ({ verdict, code }) =>
        verdict !== 'left out' || !codes.suggestions.some((one) => one.code === code && touched(one).length > 0),
    ),
  };
}

/** Every amendment may say what is to be coded; which ones a coder must read. */
function said(amendments: readonly Amendment[], changed: readonly string[]): readonly NotCoded[] {
  const fields = [...new Set(changed)];
  const inWords = amendments.some(({ changes }) => (changes?.items.length ?? 0) === 0);
  return [
    ...(fields.length > 0
      ? [
          {
            what: 'what an amendment changes',
            why: 'codes depend on it, and the suggestions come from the note as it was signed: read the amendment before coding',
            fields,
          },
        ]
      : []),
    ...(inWords
      ? [{ what: 'an amendment in words', why: 'what it says is in no field: read it before coding', fields: [] }]
      : []),
  ];
}
