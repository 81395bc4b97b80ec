import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { SOUND, samples } from './run.ts';

/** A note as a general YAML library reads it, every value the text that was typed. */
export type TypedNote = Readonly<Record<string, unknown>>;

export const typedNotes: readonly TypedNote[] = samples.map(
  (name): TypedNote => parse(readFileSync(join(SOUND, name), 'utf8'), { schema: 'failsafe' }) as TypedNote,
);

export const operations = typedNotes.filter((note) => note['record'] === 'operation');

/** What stands at a path; list positions are numbers. */
export function at(note: unknown, path: string): unknown {
  let value = note;
  for (const step of path.split('.')) {
    if (typeof value !== 'object' || value === null) return undefined;
    value = (value as Readonly<Record<string, unknown>>)[step];
  }
  return value;
}

/** The n-th number of a typed text, without a plus. */
export function number(note: unknown, path: string, which = 0): string | undefined {
  const text = at(note, path);
  if (typeof text !== 'string') return undefined;
  return (text.match(/[-+]?\d+(?:\.\d+)?/gu) ?? [])[which]?.replace(/^\+/u, '');
}

type Expected = (note: TypedNote) => string | undefined;
const num =
  (path: string, which = 0): Expected =>
  (note) =>
    number(note, path, which);
const text =
  (path: string): Expected =>
  (note) => {
    const value = at(note, path);
    return typeof value === 'string' ? value : undefined;
  };
const mainIncision = (note: TypedNote) =>
  (at(note, 'incisions') as readonly TypedNote[] | undefined)?.find((one) => one['kind'] === 'main');

/** What each column must hold, told from the typed note alone. */
export const expectedColumns: Readonly<Record<string, Expected>> = {
  note_id: text('id'),
  status: text('status'),
  patient_ref: text('patient.ref'),
  sex: text('patient.sex'),
  eye: text('eye'),
  which_eye: text('which-eye'),
  operation_date: text('date'),
  start_time: text('start'),
  finish_time: text('finish'),
  place: text('place'),
  procedure: text('procedure'),
  refraction_sphere_d: num('preop.refraction', 0),
  refraction_cylinder_d: num('preop.refraction', 1),
  refraction_axis_deg: num('preop.refraction', 2),
  pressure_mmhg: num('preop.pressure'),
  axial_length_mm: num('preop.biometry.axial-length'),
  k1_d: num('preop.biometry.k1', 0),
  k1_meridian_deg: num('preop.biometry.k1', 1),
  k2_d: num('preop.biometry.k2', 0),
  k2_meridian_deg: num('preop.biometry.k2', 1),
  keratometric_index: num('preop.biometry.index'),
  chamber_depth_mm: num('preop.biometry.chamber-depth'),
  lens_thickness_mm: num('preop.biometry.lens-thickness'),
  white_to_white_mm: num('preop.biometry.white-to-white'),
  corneal_thickness_um: num('preop.biometry.corneal-thickness'),
  pupil_mm: num('preop.pupil'),
  target_refraction_d: num('plan.target'),
  predicted_refraction_d: num('plan.predicted'),
  planned_lens_model: text('plan.lens.model'),
  planned_lens_power_d: num('plan.lens.power'),
  incision_width_mm: (note) => number(mainIncision(note), 'width'),
  capsulotomy_diameter_mm: num('capsulotomy.diameter'),
  ultrasound_time_s: num('nucleus.ultrasound-time'),
  posterior_capsule: text('capsule-state.posterior'),
  lens_maker: text('lens.maker'),
  lens_model: text('lens.model'),
  lens_power_d: num('lens.power'),
  lens_cylinder_d: num('lens.cylinder'),
  lens_axis_deg: num('lens.axis'),
  lens_serial: text('lens.serial'),
  lens_lot: text('lens.lot'),
  lens_udi: text('lens.udi'),
  lens_placed: text('lens.placed'),
};
