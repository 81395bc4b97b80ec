import type { CodingFacts } from './facts.ts';
import { notDone } from './not-done.ts';
import { notCoded, type CodingRule, type Draft, type Drafts, type NotCoded } from './suggestion.ts';

const REPLACEMENT: CodingRule = {
  says: 'Putting in a lens takes in the removal of the natural lens: the Replacement alone is coded.',
  source: 'ICD-10-PCS, root operation Replacement; public table of the edition of 2023',
  status: 'seen',
};
const EXTRACTION: CodingRule = {
  says: 'Extraction is coded only when no lens is implanted.',
  source: 'ICD-10-PCS, root operation Extraction; public table of the edition of 2023',
  status: 'seen',
};
const EXCHANGE: CodingRule = {
  says: 'Taking out a device put in by an earlier Replacement is a Removal, coded beside the new Replacement.',
  source: 'ICD-10-PCS, root operations Removal and Replacement',
  status: 'from memory',
};
const REVISION: CodingRule = {
  says: 'Correcting the position of a device is a Revision.',
  source: 'ICD-10-PCS, root operation Revision',
  status: 'from memory',
};
const VITREOUS: CodingRule = {
  says: 'Cutting out a part of the vitreous is an Excision of vitreous, coded beside the lens.',
  source: 'ICD-10-PCS, table 08B',
  status: 'seen',
};
const IRIS: CodingRule = {
  says: 'Cutting out a piece of iris is an Excision of iris.',
  source: 'ICD-10-PCS, table 08B',
  status: 'from memory',
};

/** The entries that these rules ask a table for. */
export const PCS_KEYS: readonly string[] = [
  'lens.replacement',
  'lens.extraction',
  'lens.prosthesis-removal',
  'lens.prosthesis-revision',
  'vitrectomy.anterior',
  'vitrectomy.pars-plana',
  'iridotomy',
];

/** Procedures of ICD-10-PCS: the lens first, then what was done beside it. */
export function pcsDrafts(facts: CodingFacts): Drafts {
  const drafts: Draft[] = [...lensDrafts(facts)];
  if (facts.vitrectomy) {
    const key = facts.vitrectomy.value === 'pars plana' ? 'vitrectomy.pars-plana' : 'vitrectomy.anterior';
    drafts.push({
      key,
      facts: [facts.vitrectomy],
      rule: VITREOUS,
      wouldChange: 'removal of the whole vitreous, which is a Resection (08T)',
    });
  }
  if (facts.iridotomy) {
    drafts.push({
      key: 'iridotomy',
      facts: [facts.iridotomy],
      rule: IRIS,
      wouldChange: 'an opening made without taking out tissue',
    });
  }
  return { drafts, notCoded: withoutCode(facts) };
}

function lensDrafts({ earlierLens, extraction, lensImplanted, scleralFixation }: CodingFacts): readonly Draft[] {
  if (earlierLens?.value === 'repositioned') {
    return [
      {
        key: 'lens.prosthesis-revision',
        facts: [earlierLens],
        rule: REVISION,
        wouldChange: 'a new lens, which is a Removal and a Replacement',
      },
    ];
  }
  if (earlierLens) {
    const shared = {
      facts: [earlierLens],
      rule: EXCHANGE,
      wouldChange: 'the old lens staying in the eye, or no new lens',
    };
    const removal = { key: 'lens.prosthesis-removal', ...shared };
    return lensImplanted?.value === false ? [removal] : [{ key: 'lens.replacement', ...shared }, removal];
  }
  if (lensImplanted?.value) {
    const facts = [lensImplanted, ...(extraction ? [extraction] : []), ...(scleralFixation ? [scleralFixation] : [])];
    return [
      {
        key: 'lens.replacement',
        facts,
        rule: REPLACEMENT,
        wouldChange: 'no lens implanted: then the Extraction is coded',
      },
    ];
  }
  if (lensImplanted && extraction) {
    return [
      {
        key: 'lens.extraction',
        facts: [extraction, lensImplanted],
        rule: EXTRACTION,
        wouldChange: 'a lens implanted: then the Replacement alone is coded',
      },
    ];
  }
  return [];
}

function withoutCode(facts: CodingFacts): readonly NotCoded[] {
  const why = 'no code of its own was found in ICD-10-PCS; it is part of the operation (from memory)';
  return [
    ...notDone(facts),
    ...(facts.tensionRing ? [notCoded('capsular tension ring', why, [facts.tensionRing])] : []),
    ...(facts.irisHooks ? [notCoded('iris hooks', why, [facts.irisHooks])] : []),
    ...(facts.expansionRing ? [notCoded('pupil expansion ring', why, [facts.expansionRing])] : []),
    ...(facts.extraction && !facts.lensImplanted && !facts.earlierLens
      ? [
          notCoded(
            'lens extraction',
            'the note does not say whether a lens was implanted, and the code depends on it',
            [facts.extraction],
          ),
        ]
      : []),
  ];
}
