const RCS = 'RCS Good Surgical Practice 2014, 1.3';
const WHO = 'WHO Surgical Safety Checklist 2009';
const IOLQS = 'IOL quality standard (RCOphth and UKOA 2018)';
const OUTCOME = 'Lundström et al., J Cataract Refract Surg 2021;47:373-8';

/** An element that a complete note has, and who asks for it. */
export interface NoteElement {
  readonly id: string;
  readonly label: string;
  readonly source: string;
}

/** The elements whose presence is counted, in the order of a note. */
export const ELEMENTS = [
  { id: 'times', label: 'Start and finish', source: RCS },
  { id: 'surgeon', label: 'Surgeon and grade', source: RCS },
  { id: 'which-eye', label: 'First or second eye', source: 'Cataract National Data Set (UK)' },
  { id: 'diagnosis', label: 'Diagnosis', source: '42 CFR 482.51(b)(6)' },
  { id: 'comorbidity', label: 'Comorbidity, or none', source: OUTCOME },
  { id: 'acuity', label: 'Acuity before', source: OUTCOME },
  { id: 'biometry', label: 'Biometry used', source: IOLQS },
  { id: 'target', label: 'Target refraction', source: OUTCOME },
  { id: 'prediction', label: 'Predicted refraction', source: 'DICOM (0022,1054)' },
  { id: 'planned-lens', label: 'Planned lens', source: IOLQS },
  { id: 'safety', label: 'Sign-in, time-out and sign-out', source: WHO },
  { id: 'anaesthesia', label: 'Anaesthesia', source: RCS },
  { id: 'antibiotic', label: 'Antibiotic, or why not', source: RCS },
  { id: 'incision', label: 'Incision: site and width', source: RCS },
  { id: 'capsule', label: 'Capsule, zonule and vitreous', source: RCS },
  { id: 'lens-identity', label: 'Lens: model, power, serial or lot', source: RCS },
  { id: 'complications', label: 'Complications, or none', source: RCS },
  { id: 'after-care', label: 'After-care', source: RCS },
  { id: 'reviews', label: 'Reviews planned', source: RCS },
  { id: 'signature', label: 'Signature', source: RCS },
] as const satisfies readonly NoteElement[];

export type ElementId = (typeof ELEMENTS)[number]['id'];
