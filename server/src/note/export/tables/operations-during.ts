import { recordPlan } from '@sideport/schemas';
import {
  anteriorCapsuleStates,
  leakTests,
  lensKinds,
  lensMaterials,
  placements,
  posteriorCapsuleStates,
  ringKinds,
  ringTimes,
  vitreousStates,
  zonuleStates,
} from '@sideport/schemas/vocabulary/outcome.ts';
import {
  capsulotomyOutcomes,
  capsulotomyTechniques,
  dyes,
  incisionPlanes,
  nucleusTechniques,
} from '@sideport/schemas/vocabulary/theatre.ts';
import { amount, listed, position, saidOf, whole, word, words, yesNo } from '../cell-values.ts';
import type { LeavingOperation } from '../leaving.ts';
import type { Cell, Column } from '../table.ts';
import { typedOr } from '../written-value.ts';
import { saidIn } from '../said.ts';
import { columnsOf } from './column.ts';

const { text, term, number, integer, yesNo: flag } = columnsOf<LeavingOperation>();

const mainIncision = ({ note }: LeavingOperation) => note.incisions?.items.find((one) => one.kind?.value === 'main');
const antibiotic = ({ note }: LeavingOperation) => note.drugs?.items.find((one) => one.purpose?.value === 'antibiotic');

/** The free diameter of a ring is the larger of the two that were typed. */
function ringDiameter({ note }: LeavingOperation, which: 'free' | 'compressed'): Cell {
  const size = note.ring?.size;
  const value = size?.value[which];
  return value === undefined ? undefined : typedOr(size?.text, value);
}

/** A vitrectomy that was not done is said in the section itself. */
const vitrectomy = ({ note }: LeavingOperation): Cell =>
  word(note.vitrectomy?.approach) ?? saidOf(note.$, 'vitrectomy');

/** What was done, what was found, and what lies in the eye. */
export const columnsDuring: readonly Column<LeavingOperation>[] = [
  text('incision_site', 'Main incision: site as written', (row) => mainIncision(row)?.at?.text),
  number('incision_position_deg', 'Main incision: position on the dial, 0 to 360 counter-clockwise', 'deg', (row) =>
    position(mainIncision(row)?.at, row.note.eye?.value),
  ),
  number('incision_width_mm', 'Main incision: width', 'mm', (row) => amount(mainIncision(row)?.width)),
  number('incision_enlarged_to_mm', 'Main incision: enlarged to', 'mm', (row) =>
    amount(mainIncision(row)?.['enlarged-to']),
  ),
  term('incision_plane', 'Main incision: place of the wound', incisionPlanes, (row) => word(mainIncision(row)?.plane)),
  term('dye', 'Dye', dyes, ({ note }) => word(note.dye) ?? saidOf(note.$, 'dye'), ['none']),
  text('pupil_aids', 'Pupil aids', ({ note }) =>
    listed(
      note['pupil-aid']?.items.map((aid) => aid.kind),
      saidOf(note.$, 'pupil-aid'),
    ),
  ),
  term(
    'capsulotomy_technique',
    'Capsulotomy: technique',
    capsulotomyTechniques,
    ({ note }) => word(note.capsulotomy?.technique) ?? saidOf(note.$, 'capsulotomy'),
    ['not done'],
  ),
  number('capsulotomy_diameter_mm', 'Capsulotomy: diameter', 'mm', ({ note }) => amount(note.capsulotomy?.diameter)),
  term('capsulotomy_outcome', 'Capsulotomy: outcome', capsulotomyOutcomes, ({ note }) =>
    word(note.capsulotomy?.outcome),
  ),
  term(
    'nucleus_technique',
    'Nucleus: technique',
    nucleusTechniques,
    ({ note }) => word(note.nucleus?.technique) ?? saidOf(note.$, 'nucleus'),
    ['not done'],
  ),
  number('ultrasound_time_s', 'Ultrasound time', 's', ({ note }) => amount(note.nucleus?.['ultrasound-time'])),
  number('mean_power_percent', 'Mean ultrasound power', '%', ({ note }) => amount(note.nucleus?.['mean-power'])),
  number('dissipated_energy_as_shown', 'Dissipated energy as the machine shows it', '1', ({ note }) =>
    amount(note.nucleus?.['dissipated-energy']),
  ),
  number('fluid_used_ml', 'Fluid used', 'mL', ({ note }) => amount(note.nucleus?.['fluid-used'])),
  term('anterior_capsule', 'Anterior capsule', anteriorCapsuleStates, ({ note }) =>
    word(note['capsule-state']?.anterior),
  ),
  term('posterior_capsule', 'Posterior capsule', posteriorCapsuleStates, ({ note }) =>
    word(note['capsule-state']?.posterior),
  ),
  term('zonule', 'Zonule', zonuleStates, ({ note }) => word(note['capsule-state']?.zonule)),
  term('vitreous', 'Vitreous', vitreousStates, ({ note }) => word(note['capsule-state']?.vitreous)),
  text('capsule_before', 'Of these, what was so before the operation', ({ note }) =>
    words(note['capsule-state']?.before),
  ),
  flag(
    'audit_capsule_rupture',
    'Counts as posterior capsule rupture (UK national cataract audit definition)',
    ({ derived }) => derived.capsuleRupture,
  ),
  text('vitrectomy', 'Vitrectomy', vitrectomy),
  flag('ring_used', 'Tension ring implanted', ({ note }) => yesNo(note.ring?.used)),
  term('ring_kind', 'Tension ring: kind', ringKinds, ({ note }) => word(note.ring?.kind)),
  number('ring_free_mm', 'Tension ring: free diameter', 'mm', (row) => ringDiameter(row, 'free')),
  number('ring_compressed_mm', 'Tension ring: compressed diameter', 'mm', (row) => ringDiameter(row, 'compressed')),
  text('ring_reason', 'Tension ring: reason', ({ note }) => words(note.ring?.reason)),
  term('ring_inserted', 'Tension ring: when', ringTimes, ({ note }) => word(note.ring?.inserted)),
  text('ring_serial', 'Tension ring: serial or lot number', ({ note }) => word(note.ring?.serial)),
  text('lens_maker', 'Lens: maker', ({ note }) => word(note.lens?.maker)),
  text('lens_model', 'Lens: model', ({ note }) => word(note.lens?.model)),
  term('lens_kind', 'Lens: kind', lensKinds, ({ note }) => word(note.lens?.kind)),
  number('lens_power_d', 'Lens: power', 'D', ({ note }) => amount(note.lens?.power)),
  number('lens_cylinder_d', 'Lens: cylinder', 'D', ({ note }) => amount(note.lens?.cylinder)),
  number('lens_axis_deg', 'Lens: axis of the marks', 'deg', ({ note }) => amount(note.lens?.axis)),
  integer('lens_pieces', 'Lens: pieces', '1', ({ note }) => whole(note.lens?.pieces)),
  term('lens_material', 'Lens: material', lensMaterials, ({ note }) => word(note.lens?.material)),
  text('lens_serial', 'Lens: serial number', ({ note }) => word(note.lens?.serial)),
  text('lens_lot', 'Lens: lot', ({ note }) => word(note.lens?.lot)),
  text('lens_expiry', 'Lens: expiry', ({ note }) => word(note.lens?.expiry)),
  text('lens_udi', 'Lens: scanned identifier', ({ note }) => word(note.lens?.udi)),
  term('lens_placed', 'Lens: placement', placements, ({ note }) => word(note.lens?.placed)),
  text(
    'antibiotic',
    'Antibiotic at the end; “none” where the note says that no drugs were given',
    (row) => word(antibiotic(row)?.drug) ?? saidOf(row.note.$, 'drugs'),
  ),
  term(
    'leak_test',
    'Leak test',
    leakTests,
    ({ note }) => word(note.closure?.['leak-test']) ?? saidOf(note.closure?.$, 'leak-test'),
    ['not done'],
  ),
  number('end_pressure_mmhg', 'Pressure at the end', 'mmHg', ({ note }) => amount(note.closure?.pressure)),
  text('complications', 'Complications; “none” is said in the note', ({ note }) =>
    listed(
      note.complications?.items.map((one) => one.what),
      saidOf(note.$, 'complications'),
    ),
  ),
  text(
    'said',
    'Fields that say why they have no value',
    ({ note }) => saidIn(note, recordPlan('operation')).join('; ') || undefined,
  ),
];
