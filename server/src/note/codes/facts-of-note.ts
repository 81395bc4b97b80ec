import type { Operation } from '@sideport/schemas';
import { complicationFacts, complicationsIn } from './complication-facts.ts';
import { fact, type CodingFacts, type EarlierLens, type Extraction, type Fact } from './facts.ts';

const EXTRACTIONS: Readonly<Record<string, Extraction>> = {
  'phacoemulsification with lens': 'phacoemulsification',
  phacoemulsification: 'phacoemulsification',
  'manual small-incision extraction with lens': 'extracapsular',
  'manual small-incision extraction': 'extracapsular',
  'extracapsular extraction with lens': 'extracapsular',
  'extracapsular extraction': 'extracapsular',
  'intracapsular extraction': 'intracapsular',
};
/** Procedures whose name leaves it open whether a lens was implanted. */
const LENS_NOT_NAMED: readonly string[] = ['manual small-incision extraction', 'extracapsular extraction'];
const EARLIER: Readonly<Record<string, EarlierLens>> = {
  'lens exchange': 'exchanged',
  'lens repositioning': 'repositioned',
};
const CONVERTED = 'converted to extracapsular extraction';

/**
 * What the choice of codes depends on, each fact with the fields it stands in.
 * @param ageYears whole years on the day of the operation, where they are known
 */
export function codingFacts(note: Operation, ageYears?: number): CodingFacts {
  const { eye, procedure, ring, vitrectomy } = note;
  const aids = note['pupil-aid']?.items ?? [];
  const aid = (kind: string): Fact<true> | undefined => {
    const at = aids.findIndex((one) => one.kind?.value === kind);
    return at < 0 ? undefined : { ...fact(true, `pupil-aid[${at}].kind`), says: kind };
  };
  const { during, later, torn, otherTear } = complicationFacts(note);
  const brokenOff = howBrokenOff(note);
  const earlier = brokenOff ? undefined : procedure && EARLIER[procedure.value];
  return present({
    eye: eye && fact(eye.value, 'eye'),
    whichEye: note['which-eye'] && fact(note['which-eye'].value, 'which-eye'),
    cataract: note.diagnosis?.cataract?.items.map((kind, at) => fact(kind.value, `diagnosis.cataract[${at}]`)) ?? [],
    ageYears,
    extraction: brokenOff ? undefined : extraction(note),
    brokenOff,
    earlierLens: earlier && { ...fact(earlier, 'procedure'), says: procedure?.value ?? earlier },
    lensImplanted: lensImplanted(note),
    scleralFixation: scleralFixation(note),
    ...ringFacts(ring),
    irisHooks: aid('iris hooks'),
    expansionRing: aid('expansion ring'),
    vitrectomy:
      vitrectomy &&
      (vitrectomy.approach
        ? fact(vitrectomy.approach.value, 'vitrectomy.approach')
        : fact('approach not stated', 'vitrectomy')),
    iridotomy:
      procedure?.value === 'peripheral iridotomy' && !brokenOff
        ? { ...fact(true, 'procedure'), says: procedure.value }
        : undefined,
    posteriorCapsuleTorn: torn,
    otherTear,
    complications: during,
    laterComplications: later,
    chosen: (note.codes?.items ?? []).flatMap(({ system, code, reason }, at) =>
      system && code
        ? [fact({ system: system.value, code: code.value, hasWords: reason !== undefined }, `codes[${at}]`)]
        : [],
    ),
  });
}

/** Leaves out the facts that the note does not state. */
function present(facts: { readonly [K in keyof CodingFacts]: CodingFacts[K] | undefined }): CodingFacts {
  const { cataract = [], complications: found = [], laterComplications = [], chosen = [], ...others } = facts;
  return {
    ...Object.fromEntries(Object.entries(others).filter(([, value]) => value !== undefined)),
    cataract,
    complications: found,
    laterComplications,
    chosen,
  };
}

/** A converted operation ended as the other kind. */
function extraction(note: Operation): Fact<Extraction> | undefined {
  const found = note.procedure && EXTRACTIONS[note.procedure.value];
  const converted = complicationsIn(note).find(({ value }) => value === CONVERTED);
  const named = note.procedure ? ['procedure'] : [];
  if (converted) {
    const says = [...named.map(() => note.procedure?.value ?? ''), CONVERTED];
    return { ...fact('extracapsular', ...named, ...converted.from), says };
  }
  return found && note.procedure && { ...fact(found, 'procedure'), says: note.procedure.value };
}

/** The name of the procedure is that of the plan, too: only what was done is coded. */
function howBrokenOff(note: Operation): CodingFacts['brokenOff'] {
  const found = note.procedure && EXTRACTIONS[note.procedure.value];
  const said = note.$.said['nucleus']?.word;
  // With its capsule a lens comes out whole, and there is no step for the nucleus.
  if (found && found !== 'intracapsular' && said === 'not done') return fact('not done', 'nucleus');
  const abandoned = abandonedIn(note);
  return abandoned && note.nucleus === undefined ? fact('abandoned', ...abandoned.from) : undefined;
}

const abandonedIn = (note: Operation): Fact<string> | undefined =>
  complicationsIn(note).find(({ value }) => value === 'abandoned');

function ringFacts(ring: Operation['ring']): Pick<CodingFacts, 'tensionRing' | 'ringNotKept'> {
  if (!ring?.used?.value) return {};
  const { result } = ring;
  if (result?.value === 'removed again' || result?.value === 'ring lost')
    return { ringNotKept: fact<string>(result.value, 'ring.result') };
  return { tensionRing: { ...fact(true, 'ring.used'), says: 'yes' } };
}

/** Where the lens lies says it best; without that a power, and at last the name of the procedure. */
function lensImplanted(note: Operation): Fact<boolean> | undefined {
  const { lens, procedure } = note;
  if (lens?.placed) return { ...fact(lens.placed.value !== 'none', 'lens.placed'), says: lens.placed.value };
  // What was meant to be implanted says nothing where the operation was broken off.
  if (abandonedIn(note)) return undefined;
  if (lens?.power) return { ...fact(true, 'lens.power'), says: lens.power.text };
  if (!procedure || LENS_NOT_NAMED.includes(procedure.value)) return undefined;
  if (/with lens$|^secondary lens$|^lens exchange$/u.test(procedure.value))
    return { ...fact(true, 'procedure'), says: procedure.value };
  return EXTRACTIONS[procedure.value] ? { ...fact(false, 'procedure'), says: procedure.value } : undefined;
}

/** The term of the placement holds sutured and sutureless lenses alike; the synonym that was typed may say which. */
function scleralFixation({ lens }: Operation): CodingFacts['scleralFixation'] {
  if (lens?.placed?.value !== 'scleral fixation') return undefined;
  const sutured = /^sutured\b/iu.test(lens.placed.text.trim());
  return { ...fact(sutured ? 'sutured' : 'sutures not stated', 'lens.placed'), says: lens.placed.text.trim() };
}
