/** A sound department file; all makers, models and people are invented. */
export const baseDepartment = `sideport: 1
department: Eye unit of an invented hospital
code-system: icd10-opcs4
keratometric-index: 1.3375
vertex-distance: 12 mm
formulas: [SRK/T, Haigis]
length-adjustment: none
staff:
  - ref: S-02
    role: surgeon
    grade: consultant
    may-sign: yes
    seat: temporal
    incision-effect:
      - width: 2.4 mm
        site: temporal
        flattening: 0.20 D
        eyes: 84
        since: 2029-01-01
  - ref: S-07
    role: surgeon
    grade: senior trainee
    may-sign: no
  - ref: N-11
    role: scrub nurse
    grade: nurse
    may-sign: no
lenses:
  - maker: Halden Optics
    model: HX-1
    kind: monofocal
    pieces: 1
    material: hydrophobic acrylic
    optic-diameter: 6.0 mm
    overall-diameter: 13.0 mm
    placements: [capsular bag]
    device-identifier: "09521234543213"
    powers:
      from: -10.0 D
      to: +30.0 D
      step: 0.5 D
    constants:
      a: 118.9
      a0: 1.10
      a1: 0.4
      a2: 0.1
    minus-constants:
      a: 116.1
      a0: -1.73
      a1: 0.4
      a2: 0.1
  - maker: Halden Optics
    model: HT-3
    kind: monofocal
    pieces: 3
    material: hydrophobic acrylic
    optic-diameter: 6.0 mm
    overall-diameter: 13.5 mm
    placements: [capsular bag, sulcus, sulcus with optic capture]
    powers:
      from: -5.0 D
      to: +30.0 D
      step: 0.5 D
    constants:
      a: 118.6
      a0: 0.91
      a1: 0.4
      a2: 0.1
thresholds:
  biometry-age: 12 months
  long-eye: 26 mm
  steep-meridian-tolerance: 10°
  lens-length-difference: 0.3 mm
patterns:
  note: OP-####-####
  patient: P-####
  staff: A-##
`;
