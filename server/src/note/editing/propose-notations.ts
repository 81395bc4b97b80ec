import type { Notation } from '@sideport/schemas';
import { siteWords } from '@sideport/schemas/notation/site.ts';
import { positionOf } from '../calculations/position/site.ts';
import type { Around } from './around.ts';
import type { Proposal } from './proposal.ts';

type Begun = Pick<Proposal, 'label' | 'kind' | 'detail' | 'insert'> & { readonly snippet?: boolean };

/** How a notation is written, with a place for each number; an empty value is asked, so that no number is replaced. */
const FORMS: Readonly<Record<string, readonly (readonly [label: string, insert: string])[]>> = {
  keratometry: [
    ['power @ meridian', '${1} D @ ${2}'],
    ['radius @ meridian', '${1} mm @ ${2}'],
  ],
  refraction: [['sphere / cylinder x axis', '${1} / ${2} x ${3}']],
  acuity: [
    ['metres: 6/…', '6/${1}'],
    ['feet: 20/…', '20/${1}'],
    ['logMAR …', 'logMAR ${1}'],
  ],
  dose: [['amount in volume', '${1} mg in ${2} mL']],
  regimen: [['times a day for weeks', '${1} times a day for ${2} weeks']],
  'ring size': [['free / compressed diameter', '${1}/${2} mm']],
};

const WORDS: Readonly<Record<string, readonly (readonly [word: string, meaning: string])[]>> = {
  acuity: [
    ['CF', 'counting fingers'],
    ['HM', 'hand movements'],
    ['PL', 'perception of light'],
    ['NPL', 'no perception of light'],
  ],
  'due date': [
    ['1 day', 'after the operation'],
    ['1 week', 'after the operation'],
    ['4 weeks', 'after the operation'],
    ['3 months', 'after the operation'],
  ],
};

/** What a notation offers beyond a vocabulary: its forms, its few words, places on this eye. */
export function begunBy(notation: Notation<unknown>, typed: string, around: Around): readonly Begun[] {
  const words = (WORDS[notation.name] ?? []).map(([word, meaning]): Begun => ({
    label: word,
    kind: 'word',
    detail: meaning,
    insert: word,
  }));
  const forms = (FORMS[notation.name] ?? []).map(([label, insert]): Begun => ({
    label,
    kind: 'value',
    detail: 'with a place for each number',
    insert,
    snippet: true,
  }));
  return [
    ...places(notation.name, around),
    ...words,
    ...(typed === '' ? [...forms, ...instants(notation.name, around)] : []),
  ];
}

/** Sector words with the position they stand for in the operated eye. */
function places(name: string, { reading }: Around): readonly Begun[] {
  const isOffset = name === 'offset';
  if (!isOffset && name !== 'place on the eye') return [];
  const eye = reading.kind === 'operation' || reading.kind === 'follow-up' ? reading.note.eye?.value : undefined;
  const words = siteWords.map((word): Begun => ({
    label: isOffset ? `… mm toward ${word}` : word,
    kind: isOffset ? 'value' : 'word',
    detail: eye === undefined ? 'degrees once the eye is written' : `${positionOf(word, eye)}° in a ${eye} eye`,
    insert: isOffset ? `\${1} mm toward ${word}` : word,
    snippet: isOffset,
  }));
  return isOffset ? [{ label: 'centred', kind: 'word', detail: 'no offset', insert: 'centred' }, ...words] : words;
}

/** A signature's date is usually today; its time and offset are for the signer to write. */
function instants(name: string, { surroundings }: Around): readonly Begun[] {
  const today = surroundings.today ?? null;
  if (name !== 'date and time' || today === null) return [];
  return [
    {
      label: `${today}T…`,
      kind: 'value',
      detail: 'today, time and offset',
      insert: `${today}T\${1}+\${2}`,
      snippet: true,
    },
  ];
}
