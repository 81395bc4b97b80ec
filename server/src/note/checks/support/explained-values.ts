import type { FollowUp, Operation, Path } from '@sideport/schemas';
import type { NoteReading } from '../../reading/note-reading.ts';
import { withoutNaturalLens } from '../../computing/natural-lens.ts';
import { complicationOf, has } from './course.ts';

/** Years of age below which targets and eyes are those of a child. */
const GROWING = 16;

const LARGE_INCISION = ['extracapsular extraction with lens', 'manual small-incision extraction with lens'];

const ofOperation: Readonly<Record<string, (note: Operation) => boolean>> = {
  'preop.pupil': (note) => has(note.difficulty, 'small pupil') !== undefined || note['pupil-aid'] !== undefined,
  'preop.endothelial-count': (note) => has(note.comorbidity, 'corneal guttata') !== undefined,
  'preop.pressure': (note) => has(note.comorbidity, 'glaucoma', 'ocular hypertension') !== undefined,
  'preop.biometry.chamber-depth': (note) => withoutNaturalLens(note) !== undefined,
  'plan.target': isChild,
  'incisions.enlarged-to': isLargeIncision,
  'incisions.width': isLargeIncision,
  'capsulotomy.aimed': isLargeIncision,
  'capsulotomy.diameter': isLargeIncision,
  'incisions.tunnel': (note) => has(planesOf(note), 'scleral tunnel') !== undefined || isLargeIncision(note),
};

const ofVisit: Readonly<Record<string, (note: FollowUp) => boolean>> = {
  pressure: ({ complications }) => complications?.items.some(({ what }) => what?.value === 'raised pressure') === true,
};

/** Whether the note itself says why a number is out of the ordinary. */
export function isExplained(reading: NoteReading, path: Path): boolean {
  const name = path.filter((step) => typeof step === 'string').join('.');
  if (reading.kind === 'operation') return ofOperation[name]?.(reading.note) ?? false;
  return reading.kind === 'follow-up' && (ofVisit[name]?.(reading.note) ?? false);
}

function isChild({ patient, date }: Operation): boolean {
  if (patient?.born === undefined || date === undefined) return false;
  return Number(date.value.slice(0, 4)) - patient.born.value < GROWING;
}

function isLargeIncision(note: Operation): boolean {
  return (
    LARGE_INCISION.includes(note.procedure?.value ?? '') ||
    complicationOf(note, 'converted to extracapsular extraction') !== undefined
  );
}

function planesOf({ incisions }: Operation) {
  return { items: incisions?.items.flatMap(({ plane }) => (plane === undefined ? [] : [plane])) ?? [] };
}
