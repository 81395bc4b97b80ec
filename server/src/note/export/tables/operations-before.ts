import {
  gradingScales,
  biometryMethods,
  fundusViews,
  keratometryMethods,
} from '@sideport/schemas/vocabulary/findings.ts';
import { eyeOrder, grades, procedures, sexes, sides, statuses, urgencies } from '@sideport/schemas/vocabulary/head.ts';
import { lensKinds } from '@sideport/schemas/vocabulary/outcome.ts';
import { amount, saidOf, word, words, yesNo } from '../cell-values.ts';
import type { LeavingDates, LeavingOperation } from '../leaving.ts';
import type { Column } from '../table.ts';
import { columnsOf } from './column.ts';
import { keratometry, logmarColumns, meridian, refractionPart } from './eye-values.ts';

const { text, key, term, number, integer, yesNo: flag, date } = columnsOf<LeavingOperation>();

const member = ({ note }: LeavingOperation, role: string) => note.team?.items.find((one) => one.role?.value === role);

/** Who, when, which eye, and what was measured and planned. */
export function columnsBefore(dates: LeavingDates): readonly Column<LeavingOperation>[] {
  return [
    key('note_id', 'Note id', ({ note }) => note.id?.value ?? ''),
    term('status', 'Status of the note', statuses, ({ note }) => word(note.status)),
    flag('amended', 'An amendment to the note exists', ({ amendments }) => amendments.length > 0),
    text('patient_ref', 'Patient reference', ({ note }) => word(note.patient?.ref)),
    term('sex', 'Sex', sexes, ({ note }) => word(note.patient?.sex)),
    integer(
      'age_years',
      'Age on the day of the operation, from the year of birth; 90 is 90 or more',
      'a',
      ({ derived }) => derived.ageYears,
    ),
    term('eye', 'Operated eye', sides, ({ note }) => word(note.eye)),
    term('which_eye', 'First or second eye', eyeOrder, ({ note }) => word(note['which-eye'])),
    date('operation', 'Date of the operation', dates, ({ note }) => word(note.date)),
    text('start_time', 'Start', ({ note }) => word(note.start)),
    text('finish_time', 'Finish', ({ note }) => word(note.finish)),
    integer('duration_min', 'Duration', 'min', ({ derived }) => derived.durationMinutes),
    text('place', 'Theatre or facility', ({ note }) => word(note.place)),
    term('urgency', 'Urgency', urgencies, ({ note }) => word(note.urgency)),
    term('procedure', 'Procedure', procedures, ({ note }) => word(note.procedure)),
    text('surgeon_ref', 'Surgeon', (row) => word(member(row, 'surgeon')?.ref)),
    term('surgeon_grade', 'Grade of the surgeon', grades, (row) => word(member(row, 'surgeon')?.grade)),
    text('supervisor_ref', 'Supervisor', (row) => word(member(row, 'supervisor')?.ref)),
    text('cataract', 'Kinds of cataract', ({ note }) =>
      words(note.diagnosis?.cataract, saidOf(note.diagnosis?.$, 'cataract')),
    ),
    text('cataract_grade', 'Grade', ({ note }) => word(note.diagnosis?.grade)),
    term('cataract_scale', 'Grading scale', gradingScales, ({ note }) => word(note.diagnosis?.scale)),
    text('comorbidity', 'Ocular comorbidity', ({ note }) => words(note.comorbidity, saidOf(note.$, 'comorbidity'))),
    text('difficulty', 'Surgical difficulty', ({ note }) => words(note.difficulty, saidOf(note.$, 'difficulty'))),
    text('acuity_uncorrected', 'Uncorrected acuity as written', ({ note }) => note.preop?.acuity?.uncorrected?.text),
    ...logmarColumns<LeavingOperation>(
      'acuity_uncorrected',
      'Uncorrected acuity',
      ({ note }) => note.preop?.acuity?.uncorrected,
    ),
    text('acuity_corrected', 'Best corrected acuity as written', ({ note }) => note.preop?.acuity?.corrected?.text),
    ...logmarColumns<LeavingOperation>(
      'acuity_corrected',
      'Best corrected acuity',
      ({ note }) => note.preop?.acuity?.corrected,
    ),
    number('refraction_sphere_d', 'Refraction: sphere', 'D', (row) => refractionPart(row.note.preop?.refraction, 0)),
    number('refraction_cylinder_d', 'Refraction: cylinder', 'D', (row) =>
      refractionPart(row.note.preop?.refraction, 1),
    ),
    number('refraction_axis_deg', 'Refraction: axis', 'deg', (row) => refractionPart(row.note.preop?.refraction, 2)),
    number('pressure_mmhg', 'Intraocular pressure', 'mmHg', ({ note }) => amount(note.preop?.pressure)),
    term('biometry_method', 'Method of the biometry', biometryMethods, ({ note }) =>
      word(note.preop?.biometry?.method),
    ),
    term('biometry_eye', 'Eye that the print-out of the biometry names', sides, ({ note }) =>
      word(note.preop?.biometry?.eye),
    ),
    date('biometry', 'Date of the biometry', dates, ({ note }) => word(note.preop?.biometry?.date)),
    number('axial_length_mm', 'Axial length', 'mm', ({ note }) => amount(note.preop?.biometry?.['axial-length'])),
    number('k1_d', 'Flat keratometry, where written in dioptres', 'D', ({ note }) =>
      keratometry(note.preop?.biometry?.k1, 'D'),
    ),
    number('k1_mm', 'Flat keratometry, where written as a radius', 'mm', ({ note }) =>
      keratometry(note.preop?.biometry?.k1, 'mm'),
    ),
    number('k1_meridian_deg', 'Meridian of the flat keratometry', 'deg', ({ note }) =>
      meridian(note.preop?.biometry?.k1),
    ),
    number('k2_d', 'Steep keratometry, where written in dioptres', 'D', ({ note }) =>
      keratometry(note.preop?.biometry?.k2, 'D'),
    ),
    number('k2_mm', 'Steep keratometry, where written as a radius', 'mm', ({ note }) =>
      keratometry(note.preop?.biometry?.k2, 'mm'),
    ),
    number('k2_meridian_deg', 'Meridian of the steep keratometry', 'deg', ({ note }) =>
      meridian(note.preop?.biometry?.k2),
    ),
    number('keratometric_index', 'Keratometric index', '1', ({ note }) => amount(note.preop?.biometry?.index)),
    term('keratometry_method', 'Method of the keratometry', keratometryMethods, ({ note }) =>
      word(note.preop?.biometry?.['keratometry-method']),
    ),
    number('chamber_depth_mm', 'Anterior chamber depth', 'mm', ({ note }) =>
      amount(note.preop?.biometry?.['chamber-depth']),
    ),
    number('lens_thickness_mm', 'Lens thickness', 'mm', ({ note }) => amount(note.preop?.biometry?.['lens-thickness'])),
    number('white_to_white_mm', 'White to white', 'mm', ({ note }) => amount(note.preop?.biometry?.['white-to-white'])),
    number('corneal_thickness_um', 'Corneal thickness', 'µm', ({ note }) =>
      amount(note.preop?.biometry?.['corneal-thickness']),
    ),
    number('pupil_mm', 'Dilated pupil', 'mm', ({ note }) => amount(note.preop?.pupil)),
    number('endothelial_count_per_mm2', 'Endothelial count', '/mm²', ({ note }) =>
      amount(note.preop?.['endothelial-count']),
    ),
    term(
      'fundus_view',
      'View of the fundus',
      fundusViews,
      ({ note }) => word(note.preop?.fundus?.view) ?? saidOf(note.preop?.$, 'fundus'),
      ['not done'],
    ),
    text('myopic_maculopathy', 'Myopic maculopathy category', ({ note }) =>
      word(note.preop?.fundus?.['myopic-maculopathy']),
    ),
    text('staphyloma', 'Posterior staphyloma', ({ note }) => word(note.preop?.fundus?.staphyloma)),
    number('target_refraction_d', 'Target refraction', 'D', ({ note }) => amount(note.plan?.target)),
    text('formula', 'Formulas the lens was chosen with', ({ note }) => words(note.plan?.formula)),
    number('predicted_refraction_d', 'Predicted refraction', 'D', ({ note }) => amount(note.plan?.predicted)),
    text('predicted_by', 'Formula of the prediction', ({ note }) => word(note.plan?.['predicted-by'])),
    text('planned_lens_model', 'Planned lens: model', ({ note }) => word(note.plan?.lens?.model)),
    number('planned_lens_power_d', 'Planned lens: power', 'D', ({ note }) => amount(note.plan?.lens?.power)),
    number('planned_lens_cylinder_d', 'Planned lens: cylinder', 'D', ({ note }) => amount(note.plan?.lens?.cylinder)),
    number('planned_lens_axis_deg', 'Planned lens: axis', 'deg', ({ note }) => amount(note.plan?.lens?.axis)),
    term('planned_lens_kind', 'Planned lens: kind', lensKinds, ({ note }) => word(note.plan?.lens?.kind)),
    text('anaesthesia', 'Anaesthesia given', ({ note }) => words(note.anaesthesia?.kinds)),
    flag('consent_confirmed', 'Consent confirmed on the day', ({ note }) => yesNo(note.safety?.consent?.confirmed)),
  ];
}
