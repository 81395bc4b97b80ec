import type { About } from '../check.ts';
import { completenessCheck, lensStandard, nationalAudit, sourcesOf, type Wanted } from '../support/completeness.ts';
import { implantsLens } from '../support/course.ts';

const wanted: readonly Wanted[] = [
  { path: 'preop.biometry.axial-length', by: [lensStandard], name: 'the axial length' },
  { path: 'preop.biometry.k1', by: [lensStandard], name: 'K1' },
  { path: 'preop.biometry.k2', by: [lensStandard], name: 'K2' },
  { path: 'preop.biometry.method', by: [lensStandard], grade: 'warning', name: 'the method' },
  { path: 'preop.biometry.date', by: [lensStandard], grade: 'warning', name: 'the date' },
  { path: 'preop.biometry.chamber-depth', by: [nationalAudit], grade: 'warning', name: 'the chamber depth' },
  { path: 'preop.biometry.eye', by: [lensStandard], grade: 'warning', name: 'the side it was measured on' },
];

export const biometryIncomplete = completenessCheck({
  id: 'biometry-incomplete',
  section: 'preop.biometry',
  title: 'Biometry',
  summary: 'A part of the biometry that the lens was chosen from is missing.',
  planned: true,
  due: implantsLens,
  wanted,
});

export const aboutBiometryIncomplete: About = () => ({
  why: 'A refractive surprise can only be traced when the measurements behind the lens are in the record.',
  whatToDo: 'Copy the values from the print-out, with their meridians.',
  source: sourcesOf(wanted),
  since: '1.0',
  faulty: { note: 'without: preop.biometry.axial-length' },
  sound: { note: 'preop:\n  biometry:\n    axial-length: 23.61 mm' },
});
