import type { CodingFacts, Extraction } from './facts.ts';
import { notDone } from './not-done.ts';
import { notCoded, type CodingRule, type Draft, type Drafts, type NotCoded } from './suggestion.ts';

const EDITION = 'National Clinical Coding Standards OPCS-4 2026, version 13.1';
const LENS_FIRST: CodingRule = {
  says: 'The insertion of the lens stands first; the extraction follows it as a supplementary code.',
  source: `${EDITION}, p. 31; OPCS-4.11, note at C75.1; NICE IPG264 and IPG293`,
  status: 'second-hand',
};
const EXTRACTION_ALONE: CodingRule = {
  says: 'Without a lens implanted the extraction is coded alone.',
  source: 'OPCS-4.11, C71 to C74',
  status: 'from memory',
};
const EARLIER_LENS: CodingRule = {
  says: 'Work on a lens implanted earlier has codes of its own at C75.',
  source: 'OPCS-4.11, C75',
  status: 'from memory',
};
const SUPPLEMENT: CodingRule = {
  says: 'What was done beside the lens follows as a supplementary code.',
  source: 'OPCS-4.11, as quoted in a public coding guide',
  status: 'second-hand',
};
const SITE: CodingRule = {
  says: 'The code of the side stands once, after all procedures on the site; it is never first.',
  source: `${EDITION}, PCSZ2, p. 204`,
  status: 'second-hand',
};

const EXTRACTION_KEYS: Readonly<Record<Extraction, string>> = {
  phacoemulsification: 'lens.phacoemulsification',
  extracapsular: 'lens.extracapsular',
  intracapsular: 'lens.intracapsular',
};

/** The entries that these rules ask a table for. */
export const OPCS_KEYS: readonly string[] = [
  'lens.replacement',
  'lens.replacement-sutured',
  ...Object.values(EXTRACTION_KEYS),
  'lens.prosthesis-removal',
  'lens.prosthesis-revision',
  'iris-hooks',
  'tension-ring',
  'vitrectomy.anterior',
  'vitrectomy.pars-plana',
  'site',
];

/** Procedures of OPCS-4 in their sequence: lens, extraction, supplements, side. */
export function opcsDrafts(facts: CodingFacts): Drafts {
  const procedures = [...lensDrafts(facts), ...supplementDrafts(facts)];
  const side: readonly Draft[] =
    facts.eye && procedures.length > 0
      ? [{ key: 'site', facts: [facts.eye], rule: SITE, wouldChange: 'the other eye; both eyes are two notes' }]
      : [];
  return { drafts: [...procedures, ...side], notCoded: withoutCode(facts) };
}

function lensDrafts(facts: CodingFacts): readonly Draft[] {
  const { earlierLens, extraction, lensImplanted, scleralFixation } = facts;
  if (earlierLens?.value === 'repositioned') {
    return [
      {
        key: 'lens.prosthesis-revision',
        facts: [earlierLens],
        rule: EARLIER_LENS,
        wouldChange: 'a new lens instead of the old one moved',
      },
    ];
  }
  const insertion: Draft[] = [];
  if (lensImplanted?.value && scleralFixation?.value !== 'sutures not stated') {
    insertion.push({
      key: scleralFixation ? 'lens.replacement-sutured' : 'lens.replacement',
      facts: [lensImplanted, ...(scleralFixation ? [scleralFixation] : [])],
      rule: scleralFixation ? EARLIER_LENS : LENS_FIRST,
      wouldChange: scleralFixation
        ? 'a lens held without sutures: then C75.1'
        : 'no lens implanted, or a lens sutured in place: then C75.4',
    });
  }
  if (earlierLens) {
    return [
      ...insertion,
      {
        key: 'lens.prosthesis-removal',
        facts: [earlierLens],
        rule: EARLIER_LENS,
        wouldChange: 'the old lens staying in the eye',
      },
    ];
  }
  if (!extraction) return insertion;
  return [
    ...insertion,
    {
      key: EXTRACTION_KEYS[extraction.value],
      facts: [extraction],
      rule: lensImplanted?.value ? LENS_FIRST : EXTRACTION_ALONE,
      wouldChange:
        'another way of taking out the lens. Some public lists give C71.1 or C15.1 for phacoemulsification: they are wrong',
    },
  ];
}

function supplement(key: string, fact: Draft['facts'][number] | undefined, wouldChange: string): readonly Draft[] {
  return fact ? [{ key, facts: [fact], rule: SUPPLEMENT, wouldChange }] : [];
}

function supplementDrafts({ irisHooks, tensionRing, vitrectomy }: CodingFacts): readonly Draft[] {
  const anterior = vitrectomy?.value === 'anterior';
  return [
    ...supplement('iris-hooks', irisHooks, 'another pupil aid: only hooks have this code'),
    ...supplement('tension-ring', tensionRing, 'the ring taken out again, or no ring'),
    ...supplement(
      anterior ? 'vitrectomy.anterior' : 'vitrectomy.pars-plana',
      vitrectomy,
      anterior
        ? 'the pars plana approach: then C79.2'
        : 'the anterior approach: then C79.1. An approach that is not stated is coded as pars plana',
    ),
  ];
}

const SUTURED_OR_NOT =
  'the code depends on sutures, and the note does not say whether the lens was sutured. Sutured: C75.4 (from memory); it is suggested once the lens is placed as “sutured to the sclera”. Not sutured, as with flanged haptics: confirm a code locally';

function withoutCode(facts: CodingFacts): readonly NotCoded[] {
  const { expansionRing, iridotomy, lensImplanted, scleralFixation } = facts;
  const why = 'the table has no certain code for it; choose one from the full classification';
  return [
    ...notDone(facts),
    ...(lensImplanted?.value && scleralFixation?.value === 'sutures not stated'
      ? [notCoded('insertion of a lens fixed to the sclera', SUTURED_OR_NOT, [lensImplanted, scleralFixation])]
      : []),
    ...(expansionRing ? [notCoded('pupil expansion ring', why, [expansionRing])] : []),
    ...(iridotomy ? [notCoded('iridotomy', why, [iridotomy])] : []),
    ...(lensImplanted?.value
      ? [notCoded('type of lens', 'OPCS-4 cannot express the type of a lens (NICE IPG264)', [lensImplanted])]
      : []),
  ];
}
