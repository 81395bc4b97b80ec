import type { GroupPlace, Operation } from '@sideport/schemas';
import type { ElementId } from './elements.ts';

interface Listed {
  readonly items: readonly unknown[];
}

const filled = (list: Listed | undefined): boolean => list !== undefined && list.items.length > 0;

/** Whether a note says "none" (or another reason) where a list or section would stand. */
const said = (group: GroupPlace | undefined, key: string): boolean => {
  const word = group?.said[key]?.word;
  return word !== undefined && word !== 'not recorded';
};

/** How each element is recognised. Presence only: whether it is right is for the checks. */
const TESTS: Readonly<Record<ElementId, (note: Operation) => boolean>> = {
  times: (note) => note.start !== undefined && note.finish !== undefined,
  surgeon: (note) =>
    note.team?.items.some(
      ({ role, ref, grade }) => role?.value === 'surgeon' && ref !== undefined && grade !== undefined,
    ) === true,
  'which-eye': (note) => note['which-eye'] !== undefined,
  diagnosis: (note) => filled(note.diagnosis?.cataract) || note.diagnosis?.text !== undefined,
  comorbidity: (note) => filled(note.comorbidity) || said(note.$, 'comorbidity'),
  acuity: ({ preop }) =>
    preop?.acuity?.corrected !== undefined ||
    preop?.acuity?.uncorrected !== undefined ||
    preop?.acuity?.pinhole !== undefined,
  biometry: ({ preop }) =>
    preop?.biometry?.['axial-length'] !== undefined &&
    preop.biometry.k1 !== undefined &&
    preop.biometry.k2 !== undefined,
  target: ({ plan }) => plan?.target !== undefined,
  prediction: ({ plan }) => plan?.predicted !== undefined,
  'planned-lens': ({ plan }) => plan?.lens?.model !== undefined && plan.lens.power !== undefined,
  safety: ({ safety }) =>
    safety?.['sign-in'] !== undefined && safety['time-out'] !== undefined && safety['sign-out'] !== undefined,
  anaesthesia: ({ anaesthesia }) => filled(anaesthesia?.kinds),
  antibiotic: (note) =>
    note.drugs?.items.some(({ purpose }) => purpose?.value === 'antibiotic') === true ||
    note['antibiotic-withheld'] !== undefined,
  incision: (note) =>
    note.incisions?.items.some(
      ({ kind, at, width }) => kind?.value === 'main' && at !== undefined && width !== undefined,
    ) === true,
  capsule: (note) => {
    const state = note['capsule-state'];
    return state?.posterior !== undefined && state.zonule !== undefined && state.vitreous !== undefined;
  },
  'lens-identity': ({ lens }) =>
    lens?.placed?.value === 'none' ||
    (lens?.model !== undefined && lens.power !== undefined && (lens.serial !== undefined || lens.lot !== undefined)),
  complications: (note) => filled(note.complications) || said(note.$, 'complications'),
  'after-care': (note) => filled(note['after-care']?.drops) || note['after-care']?.instructions !== undefined,
  reviews: (note) => filled(note.reviews) || said(note.$, 'reviews'),
  signature: (note) => filled(note.signed),
};

/** The elements of a complete note that this one has, in the order of the list of elements. */
export function recordedElements(note: Operation): readonly ElementId[] {
  return (Object.keys(TESTS) as readonly ElementId[]).filter((id) => TESTS[id](note));
}
