/** Lines laid over the sound operation so that it tells of a long eye, well managed. */
export const longEye = `comorbidity: [high myopia]
difficulty: [long eye]
preop:
  refraction: -14.25 / -0.75 x 175
  biometry:
    axial-length: 29.60 mm
    chamber-depth: 3.62 mm
  fellow-eye:
    axial-length: 29.41 mm
  counselling:
    - lifelong risk of retinal detachment
plan:
  target: -2.50 D
  formula: [Haigis]
  predicted: -2.61 D
  lens:
    power: +5.5 D
  spare-lens:
    power: +5.0 D
  precautions: [reverse pupillary block, low bottle]
safety:
  lens-verified:
    power: +5.5 D
lens:
  power: +5.5 D
reviews:
  - what: pressure
    due: 1 day
  - what: dilated peripheral retina
    due: 4 weeks`;

/** Lines that tell of a torn capsule with vitreous loss, well managed: vitrectomy, three-piece lens in the sulcus. */
export const tornCapsule = `capsule-state:
  posterior: torn
  vitreous: prolapsed
  vitreous-in-wound: no
vitrectomy:
  approach: anterior
  stain: triamcinolone
  complete: yes
safety:
  lens-verified:
    model: HT-3
    power: +20.5 D
lens:
  model: HT-3
  power: +20.5 D
  pieces: 3
  udi: not recorded
  placed: sulcus
  changed-because: three-piece lens in the sulcus after the capsule tear
complications:
  - what: posterior capsule rupture
    when: nucleus
    account: the last fragment turned and caught the capsule
    action: dispersive viscoelastic
    told: yes
  - what: vitreous loss
    when: nucleus
    account: vitreous came forward through the tear
    action: anterior vitrectomy
    told: yes
findings: tear of the posterior capsule, rim of the anterior capsule complete
reviews:
  - what: pressure, wound, chamber
    due: 1 day
  - what: dilated retina
    due: 2 weeks`;
