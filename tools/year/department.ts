import { LIST_A, SURGEONS } from './truth.ts';

const staff = SURGEONS.map(
  ({ ref, grade, site }) =>
    `  - ref: ${ref}\n    role: surgeon\n    grade: ${grade}\n    may-sign: yes\n    seat: ${site}\n`,
).join('');

/** The department file of the invented year. Makers and models are invented. */
export const DEPARTMENT = `sideport: 1
department: Eye unit, invented hospital
code-system: icd10-opcs4
keratometric-index: 1.3375
vertex-distance: 12 mm
formulas: [SRK/T]
staff:
${staff}  - ref: N-11
    role: scrub nurse
    grade: nurse
    may-sign: no
lenses:
  - maker: Halden Optics
    model: HX-1
    kind: monofocal
    pieces: 1
    optic-diameter: 6.0 mm
    placements: [capsular bag]
    constants:
      a: ${LIST_A}
    minus-constants:
      a: 114.4
  - maker: Halden Optics
    model: HT-3
    kind: monofocal
    pieces: 3
    optic-diameter: 6.0 mm
    placements: [capsular bag, sulcus]
    constants:
      a: ${LIST_A}
review-schedule:
  - what: refraction and keratometry
    due: 4 weeks
    when: always
`;
