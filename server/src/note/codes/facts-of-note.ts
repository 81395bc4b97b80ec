import type { Operation } from '@sideport/schemas';
import type { CodingFacts, EarlierLens, Extraction, Fact } from './facts.ts';

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
const RUPTURE = 'posterior capsule rupture';
const CONVERTED = 'converted to extracapsular extraction';

/** What the choice of codes depends on, each fact with the fields it stands in. */
export function codingFacts(note: Operation): CodingFacts {
  const { eye, procedure, ring, vitrectomy } = note;
  const aids = note['pupil-aid']?.items ?? [];
  const aid = (kind: string): Fact<true> | undefined => {
    const at = aids.findIndex((one) => one.kind?.value === kind);
    return at < 0 ? undefined : { ...fact(true, `pupil-aid[${at}].kind`), says: kind };
  };
  const earlier = procedure && EARLIER[procedure.value];
  return present({
    eye: eye && fact(eye.value, 'eye'),
    cataract: note.diagnosis?.cataract?.items.map((kind, at) => fact(kind.value, `diagnosis.cataract[${at}]`)) ?? [],
    extraction: extraction(note),
    earlierLens: earlier && fact(earlier, 'procedure'),
    lensImplanted: lensImplanted(note),
    scleralFixation: scleralFixation(note),
    tensionRing:
      ring?.used?.value && ring.result?.value !== 'removed again'
        ? { ...fact(true, 'ring.used'), says: 'yes' }
        : undefined,
    irisHooks: aid('iris hooks'),
    expansionRing: aid('expansion ring'),
    vitrectomy:
      vitrectomy &&
      (vitrectomy.approach
        ? fact(vitrectomy.approach.value, 'vitrectomy.approach')
        : fact('approach not stated', 'vitrectomy')),
    iridotomy:
      procedure?.value === 'peripheral iridotomy' ? { ...fact(true, 'procedure'), says: procedure.value } : undefined,
    posteriorCapsuleTorn: capsuleTorn(note),
    complications: complications(note).filter(({ value }) => value !== RUPTURE),
    chosen: (note.codes?.items ?? []).flatMap(({ system, code }, at) =>
      system && code ? [fact({ system: system.value, code: code.value }, `codes[${at}]`)] : [],
    ),
  });
}

const fact = <const T>(value: T, ...from: string[]): Fact<T> => ({ value, from });

/** Leaves out the facts that the note does not state. */
function present(facts: { readonly [K in keyof CodingFacts]: CodingFacts[K] | undefined }): CodingFacts {
  const { cataract = [], complications: found = [], chosen = [], ...others } = facts;
  return {
    ...Object.fromEntries(Object.entries(others).filter(([, value]) => value !== undefined)),
    cataract,
    complications: found,
    chosen,
  };
}

function complications(note: Operation): readonly Fact<string>[] {
  return (note.complications?.items ?? []).flatMap(({ what }, at) =>
    what ? [fact<string>(what.value, `complications[${at}].what`)] : [],
  );
}

/** A converted operation ended as the other kind. */
function extraction(note: Operation): Fact<Extraction> | undefined {
  const found = note.procedure && EXTRACTIONS[note.procedure.value];
  const converted = complications(note).find(({ value }) => value === CONVERTED);
  if (converted) return fact('extracapsular', 'procedure', ...converted.from);
  return found && fact(found, 'procedure');
}

/** Where the lens lies says it best; without that a power, and at last the name of the procedure. */
function lensImplanted({ lens, procedure }: Operation): Fact<boolean> | undefined {
  if (lens?.placed) return { ...fact(lens.placed.value !== 'none', 'lens.placed'), says: lens.placed.value };
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

function capsuleTorn(note: Operation): Fact<true> | undefined {
  const from = [
    ...(note['capsule-state']?.posterior?.value === 'torn' ? ['capsule-state.posterior'] : []),
    ...complications(note).flatMap((one) => (one.value === RUPTURE ? one.from : [])),
  ];
  return from.length > 0 ? { value: true, from, says: 'torn' } : undefined;
}
