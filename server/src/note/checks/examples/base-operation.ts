/** A complete, sound, final note of a routine operation: the examples of the checks change a line or two of it. */
export const baseOperation = `opnote: 1
record: operation
status: final
id: OP-2031-0102
date: 2031-04-08
start: 10:05
finish: 10:26
place: Theatre 2
urgency: elective
procedure: phacoemulsification with lens
patient:
  ref: P-1042
  born: 1958
  sex: female
  allergies: none
  anticoagulant: none
  alpha-blocker: never
  lies-flat: yes
eye: right
which-eye: first
team:
  - role: surgeon
    ref: S-02
    grade: consultant
  - role: scrub nurse
    ref: N-11
    grade: nurse
diagnosis:
  eye: right
  cataract: [nuclear, cortical]
  grade: NO3 NC3 C2 P1
  scale: LOCS III
  post-operative: [pseudophakia]
comorbidity: none
difficulty: none
indication: glare when driving, cannot read the newspaper
preop:
  acuity:
    uncorrected: 6/36
    corrected: 6/18
  refraction: -1.25 / -0.75 x 175
  vertex-distance: 12 mm
  pressure: 16 mmHg
  biometry:
    method: optical
    device: clinic biometer 2
    date: 2031-03-03
    eye: right
    axial-length: 23.61 mm
    k1: 43.00 D @ 178
    k2: 43.75 D @ 88
    index: 1.3375
    chamber-depth: 3.12 mm
    lens-thickness: 4.52 mm
    white-to-white: 11.9 mm
    corneal-thickness: 548 µm
  pupil: 7.0 mm
  fundus:
    view: clear
    macula: flat
    periphery: [flat]
  fellow-eye:
    axial-length: 23.54 mm
    k1: 43.12 D @ 5
    k2: 43.62 D @ 95
  counselling:
    - glasses for reading afterwards
plan:
  eye: right
  target: -0.25 D
  formula: [SRK/T, Haigis]
  predicted: -0.31 D
  predicted-by: Haigis
  lens:
    maker: Halden Optics
    model: HX-1
    kind: monofocal
    power: +21.5 D
  spare-lens:
    maker: Halden Optics
    model: HT-3
    power: +20.5 D
    placed: sulcus
  incision:
    at: temporal
    width: 2.4 mm
    on-steep-meridian: no
  anaesthesia: [sub-Tenon]
  seat: temporal
  ring: not planned
  precautions: [none needed]
safety:
  consent:
    eye: right
    date: 2031-03-03
    confirmed: yes
  site-marked: right
  sign-in:
    time: 09:48
    by: N-11
  time-out:
    time: 10:01
    by: S-02
  lens-verified:
    eye: right
    model: HX-1
    power: +21.5 D
    by: [S-02, N-11]
    time: 10:02
  sign-out:
    time: 10:29
    by: N-11
anaesthesia:
  kinds: [sub-Tenon]
  drug: lidocaine 2 %
  volume: 4 mL
  given-by: S-02
  anaesthetist: none
antisepsis:
  agent: povidone-iodine
  strength: 5 %
  contact: 3 min
seat: temporal
thromboprophylaxis: not applicable
incisions:
  - kind: main
    at: temporal
    width: 2.4 mm
    plane: clear corneal
    architecture: two planes
    tunnel: 1.75 mm
    sutures: none
  - kind: side-port
    at: 110°
    width: 1.0 mm
ovd:
  - kind: cohesive
    agent: sodium hyaluronate
    strength: 1.4 %
dye: none
pupil-aid: none
capsulotomy:
  technique: continuous curvilinear
  aimed: 5.0 mm
  diameter: 5.1 mm
  off-centre: centred
  corneal-marker: none
  outcome: complete
hydrodissection:
  cortex: yes
  delineation: no
  rotation: yes
nucleus:
  technique: divide and conquer
  steps:
    - step: sculpt
      bottle-height: 70 cm
      vacuum: 60 mmHg
      flow: 25 mL/min
      ultrasound-mode: continuous
      power: 60 %
    - step: quadrant removal
      bottle-height: 75 cm
      vacuum: 350 mmHg
      flow: 30 mL/min
      ultrasound-mode: burst
      power: 40 %
  ultrasound-time: 52 s
  mean-power: 20 %
cortex:
  method: bimanual
  bottle-height: 70 cm
  vacuum: 400 mmHg
  flow: 28 mL/min
  complete: yes
capsule-state:
  anterior: intact
  posterior: intact
  zonule: intact
  vitreous: not prolapsed
vitrectomy: not done
ring:
  used: no
lens:
  maker: Halden Optics
  model: HX-1
  kind: monofocal
  power: +21.5 D
  pieces: 1
  material: hydrophobic acrylic
  optic-diameter: 6.0 mm
  serial: "0040719101"
  lot: L2031B
  expiry: 2034-06-30
  udi: (01)09521234543213(17)340630(10)L2031B(21)0040719101
  placed: capsular bag
  haptics-at: 90°
  off-centre: centred
  ovd-removed-behind: yes
  card-given: yes
drugs:
  - drug: cefuroxime
    purpose: antibiotic
    route: intracameral
    dose: 1 mg in 0.1 mL
closure:
  hydration: yes
  sutures: none
  leak-test: no leak
  pressure-by-touch: normal
complications: none
findings: soft nucleus, clear cortex, capsule clean
specimens: none
blood-loss: minimal
condition-at-end: comfortable, chamber formed
after-care:
  drops:
    - drug: dexamethasone 0.1 %
      kind: steroid
      regimen: 4 times a day for 4 weeks
  shield: yes
  instructions: warned of pain, redness and falling sight; to come the same day
reviews:
  - what: refraction and pressure
    due: 4 weeks
signed:
  - by: S-02
    meaning: author
    at: 2031-04-08T10:48+01:00
`;
