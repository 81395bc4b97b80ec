import { recordPlan } from '@sideport/schemas';
import { sides } from '@sideport/schemas/vocabulary/head.ts';
import { leakTests, placements } from '@sideport/schemas/vocabulary/outcome.ts';
import { amount, listed, saidOf, word } from '../cell-values.ts';
import type { LeavingDates, LeavingFollowUp } from '../leaving.ts';
import { saidIn } from '../said.ts';
import type { Table } from '../table.ts';
import { columnsOf } from './column.ts';
import { keratometry, logmarColumns, meridian, refractionPart } from './eye-values.ts';

const { text, key, term, number, yesNo: flag, date } = columnsOf<LeavingFollowUp>();

/** Later visits; each names its operation. */
export function followUpTable(dates: LeavingDates): Table<LeavingFollowUp> {
  return {
    name: 'follow-ups',
    title: 'Later visits',
    key: ['note_id'],
    columns: [
      key('note_id', 'Note id', ({ note }) => note.id?.value ?? ''),
      flag('amended', 'An amendment to the visit exists', ({ amendments }) => amendments.length > 0),
      text('operation_id', 'Note id of the operation', ({ note }) => word(note.operation)),
      text('patient_ref', 'Patient reference', ({ note }) => word(note.patient?.ref)),
      term('eye', 'Eye', sides, ({ note }) => word(note.eye)),
      date('visit', 'Date of the visit', dates, ({ note }) => word(note.date)),
      text('visit', 'Visit', ({ note }) => word(note.visit)),
      text('acuity_uncorrected', 'Uncorrected acuity as written', ({ note }) => note.acuity?.uncorrected?.text),
      ...logmarColumns<LeavingFollowUp>(
        'acuity_uncorrected',
        'Uncorrected acuity',
        ({ note }) => note.acuity?.uncorrected,
      ),
      text('acuity_corrected', 'Best corrected acuity as written', ({ note }) => note.acuity?.corrected?.text),
      ...logmarColumns<LeavingFollowUp>(
        'acuity_corrected',
        'Best corrected acuity',
        ({ note }) => note.acuity?.corrected,
      ),
      number('refraction_sphere_d', 'Refraction: sphere', 'D', (row) => refractionPart(row.note.refraction, 0)),
      number('refraction_cylinder_d', 'Refraction: cylinder', 'D', (row) => refractionPart(row.note.refraction, 1)),
      number('refraction_axis_deg', 'Refraction: axis', 'deg', (row) => refractionPart(row.note.refraction, 2)),
      number('k1_d', 'Flat keratometry, where written in dioptres', 'D', ({ note }) =>
        keratometry(note.keratometry?.k1, 'D'),
      ),
      number('k1_mm', 'Flat keratometry, where written as a radius', 'mm', ({ note }) =>
        keratometry(note.keratometry?.k1, 'mm'),
      ),
      number('k1_meridian_deg', 'Meridian of the flat keratometry', 'deg', ({ note }) =>
        meridian(note.keratometry?.k1),
      ),
      number('k2_d', 'Steep keratometry, where written in dioptres', 'D', ({ note }) =>
        keratometry(note.keratometry?.k2, 'D'),
      ),
      number('k2_mm', 'Steep keratometry, where written as a radius', 'mm', ({ note }) =>
        keratometry(note.keratometry?.k2, 'mm'),
      ),
      number('k2_meridian_deg', 'Meridian of the steep keratometry', 'deg', ({ note }) =>
        meridian(note.keratometry?.k2),
      ),
      number('pressure_mmhg', 'Intraocular pressure', 'mmHg', ({ note }) => amount(note.pressure)),
      term('wound', 'Wound', leakTests, ({ note }) => word(note.wound)),
      term('lens_placed', 'Lens: placement', placements, ({ note }) => word(note.lens?.placed)),
      number('lens_axis_deg', 'Lens: axis found', 'deg', ({ note }) => amount(note.lens?.axis)),
      text('complications', 'Complications; “none” is said in the note', ({ note }) =>
        listed(
          note.complications?.items.map((one) => one.what),
          saidOf(note.$, 'complications'),
        ),
      ),
      text(
        'said',
        'Fields that say why they have no value',
        ({ note }) => saidIn(note, recordPlan('follow-up')).join('; ') || undefined,
      ),
    ],
  };
}
