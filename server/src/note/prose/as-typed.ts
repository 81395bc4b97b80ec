import type { Field } from '@sideport/schemas';
import { and } from './english.ts';

/**
 * Synonyms that say more than the term they are read as, as they are printed: the term is for counting, and whoever
 * reads the note is told what was written. The other synonyms give way to their term.
 */
export const SAYS_MORE: Readonly<Record<string, readonly string[]>> = {
  white: ['mature', 'intumescent', 'white mature'],
  hypermature: ['Morgagnian'],
  brunescent: ['brown', 'black'],
  'brunescent or white lens': ['white lens', 'mature lens', 'hard nucleus'],
  'corneal guttata': ["Fuchs' dystrophy", 'Fuchs dystrophy', 'FECD', 'endothelial dystrophy'],
  'corneal opacity': ['corneal scar', 'corneal haze'],
  'previous corneal refractive surgery': [
    'LASIK',
    'previous LASIK',
    'post-LASIK',
    'PRK',
    'RK',
    'previous PRK',
    'previous RK',
  ],
  'high myopia': ['pathological myopia'],
  'narrow angle': ['angle closure'],
  'lens subluxation': ['ectopia lentis'],
  'retinal hole': ['atrophic hole'],
  'retinal tear': ['horseshoe tear'],
  'treated retinal tear': ['lasered tear'],
  nucleus: ['sculpting', 'phacoemulsification', 'chopping', 'quadrant removal', 'removal of the last quadrant'],
  'anterior capsule tear': ['radial tear', 'rhexis tear'],
  'lens fragment into vitreous': ['dropped nucleus', 'nucleus drop', 'nucleus in the vitreous'],
  'iris damage': ['iris tear', 'sphincter tear'],
  'Descemet detachment': ['Descemet tear', 'Descemet strip'],
  'suprachoroidal haemorrhage': ['expulsive haemorrhage'],
  'lens damaged': ['torn haptic', 'broken haptic', 'damaged haptic', 'scratched optic'],
  'retinal detachment': ['rhegmatogenous retinal detachment'],
  glaucoma: ['POAG', 'PACG', 'primary open-angle glaucoma', 'primary angle-closure glaucoma', 'angle-closure glaucoma'],
  'diabetic retinopathy': [
    'NPDR',
    'PDR',
    'BDR',
    'proliferative diabetic retinopathy',
    'background diabetic retinopathy',
  ],
  'age-related macular degeneration': ['dry AMD', 'wet AMD', 'dry ARMD', 'wet ARMD'],
  uveitis: ['iritis', 'prolonged inflammation', 'rebound uveitis', 'rebound inflammation'],
  torn: ['torn, vitreous face intact'],
  'tension ring with eyelet': ['sutured tension ring'],
  'drainage device': ['tube', 'aqueous shunt'],
  'angle surgery': ['goniotomy', 'trabecular bypass', 'trabeculotomy', 'goniosynechialysis'],
  'corneal graft': ['penetrating keratoplasty', 'endothelial keratoplasty', 'lamellar keratoplasty'],
  'iris repair': ['pupilloplasty', 'iris suture'],
  'posterior capsulotomy on purpose': ['posterior capsulorhexis'],
  'laser-assisted steps': ['femtosecond laser'],
  'scleral fixation': ['sutured to the sclera'],
};

const fold = (text: string): string => text.trim().toLowerCase().replaceAll(/\s+/gu, ' ').replaceAll('’', "'");

/** The word of a field: its term, or what was typed where that says more. */
export function term(field: Pick<Field<string>, 'text' | 'value'>): string {
  const typed = fold(field.text);
  return SAYS_MORE[field.value]?.find((synonym) => fold(synonym) === typed) ?? field.value;
}

/** All that a list names; “other” says that there is one more, and not which. */
export function terms(fields: readonly Field<string>[]): string {
  const named = fields.filter(({ value }) => value !== 'other').map((field) => term(field));
  if (named.length === fields.length) return and(named);
  return and([...named, named.length === 0 ? 'one that is not named here' : 'another that is not named here']);
}

/** What went wrong; undefined where the note names none of the trade's terms. */
export function complicationName(what: Field<string> | undefined): string | undefined {
  return what === undefined || what.value === 'other' ? undefined : term(what);
}
