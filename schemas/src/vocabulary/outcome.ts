import { vocabulary } from '../notation/words.ts';

export const capsuleParts = vocabulary('part of the capsule', [
  ['anterior capsule', ['anterior']],
  ['posterior capsule', ['posterior']],
  ['zonule', ['zonules']],
  ['vitreous', []],
]);

export const anteriorCapsuleStates = vocabulary('state of the anterior capsule', [
  ['intact', ['continuous']],
  ['cut on purpose', ['relaxing cuts', 'relaxing incisions'], 'Enlarged or relaxed with scissors, as intended.'],
  ['torn, contained', ['contained tear', 'tear, contained']],
  ['torn, uncontained', ['torn', 'radial tear', 'uncontained tear']],
  ['absent', ['none left', 'removed']],
]);

export const posteriorCapsuleStates = vocabulary('state of the posterior capsule', [
  ['intact', []],
  ['torn', ['ruptured', 'rupture', 'tear', 'torn, vitreous face intact']],
  ['opened on purpose', ['planned posterior capsulotomy', 'primary posterior capsulotomy', 'posterior capsulorhexis']],
  ['absent', ['removed']],
]);

export const zonuleStates = vocabulary('state of the zonule', [
  ['intact', ['normal']],
  ['weak', ['lax', 'loose', 'phacodonesis', 'zonulopathy']],
  ['ruptured', ['dialysis', 'zonular dialysis', 'dehiscence']],
  ['absent', ['none left']],
]);

export const vitreousStates = vocabulary('state of the vitreous', [
  ['not prolapsed', ['no prolapse', 'behind the capsule', 'intact', 'undisturbed']],
  ['prolapsed', ['vitreous loss', 'lost', 'in the anterior chamber', 'prolapse']],
  ['absent after vitrectomy', ['vitrectomised', 'previously vitrectomised']],
  ['silicone oil', ['oil', 'oil-filled', 'filled with silicone oil']],
]);

export const vitrectomyApproaches = vocabulary('vitrectomy approach', [
  ['anterior', ['anterior vitrectomy', 'limbal']],
  ['pars plana', ['pars plana vitrectomy', 'ppv']],
]);

export const ringKinds = vocabulary('kind of ring', [
  ['tension ring', ['capsular tension ring', 'ctr', 'standard', 'standard tension ring']],
  ['tension ring with eyelet', ['sutured tension ring', 'modified tension ring']],
  ['tension segment', ['capsular tension segment', 'segment']],
]);

export const ringReasons = vocabulary('reason for a ring', [
  ['weak zonule', ['weak zonules', 'zonular weakness', 'loose zonule', 'loose zonules', 'zonulopathy']],
  ['ruptured zonule', ['zonular dialysis', 'dialysis']],
  ['pseudoexfoliation', ['pxf', 'pex', 'exfoliation']],
  ['long eye', ['large bag', 'high myopia']],
  ['toric lens stability', ['rotational stability']],
  ['previous vitrectomy', ['vitrectomised eye']],
  ['centration', ['lens centration']],
  ['trauma', []],
  ['other', []],
]);

export const ringTimes = vocabulary('time of insertion', [
  ['before nucleus removal', ['before nucleus']],
  ['before cortex removal', ['before cortex', 'after nucleus removal']],
  ['after cortex removal', ['after cortex', 'late']],
  ['after lens insertion', []],
]);

export const ringResults = vocabulary('result of the ring', [
  ['bag round and centred', ['bag stable', 'centred', 'good']],
  ['bag still decentred', ['decentred']],
  ['removed again', ['explanted']],
  ['ring lost', ['dropped']],
]);

export const bagOrSulcus = vocabulary('place of the ring', [
  ['capsular bag', ['bag', 'in the bag']],
  ['sulcus', ['ciliary sulcus']],
]);

export const lensKinds = vocabulary('kind of lens', [
  ['monofocal', []],
  ['toric', ['toric monofocal']],
  ['multifocal', ['trifocal', 'bifocal']],
  ['toric multifocal', []],
  ['extended depth of focus', ['extended depth', 'edof']],
  ['anterior chamber', ['angle-supported', 'aciol', 'ac iol']],
  ['iris-claw', ['iris claw']],
]);

export const lensMaterials = vocabulary('lens material', [
  ['hydrophobic acrylic', ['hydrophobic', 'acrylic hydrophobic']],
  ['hydrophilic acrylic', ['hydrophilic', 'acrylic hydrophilic']],
  ['silicone', []],
  ['PMMA', ['polymethylmethacrylate']],
]);

export const placements = vocabulary('placement', [
  ['capsular bag', ['bag', 'in the bag', 'in the capsular bag']],
  ['sulcus', ['ciliary sulcus', 'in the sulcus']],
  ['sulcus with optic capture', ['sulcus, optic captured', 'optic capture']],
  ['anterior chamber', ['angle', 'aciol', 'ac iol', 'in the anterior chamber']],
  ['iris, in front', ['iris fixated', 'prepupillary', 'iris-fixated']],
  ['iris, behind', ['retropupillary', 'retro-iris']],
  [
    'scleral fixation',
    [
      'scleral fixated',
      'sutured to the sclera',
      'intrascleral',
      'intrascleral fixation',
      'intrascleral haptic fixation',
    ],
  ],
  ['none', ['aphakic', 'left aphakic', 'no lens']],
]);

export const drugPurposes = vocabulary('purpose of a drug', [
  ['antibiotic', ['prophylaxis']],
  ['steroid', ['anti-inflammatory', 'corticosteroid']],
  ['non-steroidal', ['nsaid', 'non-steroidal anti-inflammatory', 'non-steroidal anti-inflammatory drug']],
  ['miotic', []],
  ['mydriatic', ['cycloplegic']],
  ['vitreous stain', ['stain']],
  ['anaesthetic', ['anesthetic']],
  ['pressure lowering', ['iop lowering', 'lowering of pressure']],
  ['other', []],
]);

export const routes = vocabulary('route', [
  ['intracameral', ['ic']],
  ['subconjunctival', ['subconj', 's/c']],
  ['sub-Tenon', ["sub-tenon's", 'sub-tenons', 'subtenon', "subtenon's", 'subtenons']],
  ['intravitreal', ['ivt']],
  ['topical', ['drops']],
  ['oral', ['by mouth', 'po', 'p.o.']],
  ['intravenous', ['iv', 'i.v.']],
  ['intramuscular', ['im', 'i.m.']],
]);

export const leakTests = vocabulary('leak test', [
  ['no leak', ['seidel negative', 'negative', 'watertight', 'water-tight', 'dry', 'secure', 'sealed']],
  ['no leak after hydration', ['watertight after hydration']],
  ['no leak after suture', ['watertight after suture']],
  ['leak', ['seidel positive', 'positive']],
]);

export const sutureMaterials = vocabulary('suture material', [
  ['nylon', []],
  ['polyglactin', ['absorbable']],
  ['polypropylene', []],
]);

export const complicationKinds = vocabulary('complication', [
  [
    'anterior capsule tear',
    [
      'anterior capsular tear',
      'radial tear',
      'ac tear',
      'torn anterior capsule',
      'rhexis tear',
      'rhexis run-out',
      'capsulorhexis tear',
      'capsulorhexis run-out',
    ],
  ],
  [
    'posterior capsule rupture',
    [
      'posterior capsule tear',
      'posterior capsular tear',
      'pcr',
      'pc rupture',
      'pc tear',
      'posterior capsular rupture',
      'posterior capsule torn',
      'torn posterior capsule',
      'ruptured posterior capsule',
      'rupture of the posterior capsule',
      'tear of the posterior capsule',
      'pc rent',
      'posterior capsule rent',
      'posterior capsular rent',
      'rent in the posterior capsule',
    ],
  ],
  ['vitreous loss', ['vitreous prolapse', 'vitreous in the anterior chamber', 'loss of vitreous', 'vit loss']],
  ['zonular dialysis', ['zonule rupture', 'zonular rupture', 'zonular dehiscence', 'zonulolysis', 'zonule dialysis']],
  [
    'lens fragment into vitreous',
    [
      'dropped nucleus',
      'nucleus drop',
      'dropped fragment',
      'dropped lens fragment',
      'lens fragment in the vitreous',
      'nucleus in the vitreous',
    ],
  ],
  ['retained fragment', ['retained lens fragment', 'retained lens matter']],
  ['retained cortex', ['retained cortical matter']],
  ['iris prolapse', ['prolapse of the iris', 'prolapsed iris']],
  ['iris damage', ['iris trauma', 'iris damage from phaco', 'iris tear', 'sphincter tear']],
  ['iridodialysis', []],
  ['hyphaema', ['hyphema', 'bleeding into the chamber', 'anterior chamber bleeding']],
  [
    'Descemet detachment',
    [
      "descemet's detachment",
      'descemet membrane detachment',
      "descemet's membrane detachment",
      'detachment of descemet',
      'descemet tear',
      'descemet strip',
      'dm detachment',
    ],
  ],
  ['corneal abrasion', ['epithelial abrasion', 'corneal epithelial abrasion', 'corneal epithelial defect']],
  ['corneal oedema', ['corneal edema']],
  ['wound burn', ['phaco burn', 'incision burn', 'corneal burn', 'thermal burn']],
  ['wound leak', ['leaking wound', 'leak of the wound']],
  [
    'aqueous misdirection',
    ['malignant glaucoma'],
    'Aqueous runs backwards into the vitreous: a flat chamber and a high pressure.',
  ],
  ['flat chamber', ['flat anterior chamber', 'flat ac']],
  ['reverse pupillary block', ['deep chamber from lens-iris retropulsion', 'lens-iris diaphragm retropulsion']],
  [
    'suprachoroidal haemorrhage',
    ['suprachoroidal hemorrhage', 'choroidal haemorrhage', 'choroidal hemorrhage', 'expulsive haemorrhage'],
  ],
  ['choroidal effusion', ['suprachoroidal effusion', 'choroidal detachment']],
  ['vitreous haemorrhage', ['vitreous hemorrhage']],
  [
    'lens damaged',
    ['torn haptic', 'damaged lens', 'damaged iol', 'iol damage', 'broken haptic', 'damaged haptic', 'scratched optic'],
  ],
  ['lens exchanged', ['exchange during the operation']],
  ['wrong lens', ['wrong lens implanted', 'wrong lens inserted']],
  ['retrobulbar haemorrhage', ['retrobulbar hemorrhage']],
  ['globe perforation', ['perforation of the globe', 'globe penetration']],
  [
    'converted to extracapsular extraction',
    ['conversion to ecce', 'converted to ecce', 'conversion to extracapsular extraction', 'conversion'],
  ],
  ['abandoned', ['operation abandoned']],
  [
    'raised pressure',
    [
      'pressure spike',
      'iop spike',
      'ocular hypertension',
      'high pressure',
      'high iop',
      'raised intraocular pressure',
      'raised iop',
    ],
  ],
  ['hypotony', [], 'A pressure too low for the eye.'],
  ['cystoid macular oedema', ['cystoid macular edema', 'cmo', 'cme']],
  ['uveitis', ['prolonged inflammation', 'iritis', 'rebound uveitis', 'rebound inflammation']],
  ['endophthalmitis', []],
  ['toxic anterior segment syndrome', ['tass']],
  ['retinal tear', ['retinal break']],
  ['retinal detachment', ['detached retina', 'rhegmatogenous retinal detachment']],
  ['lens decentred', ['lens decentration', 'decentred lens', 'decentred iol', 'iol decentration']],
  ['lens dislocated', ['lens dislocation', 'dislocated lens', 'dislocated iol', 'iol dislocation']],
  ['pupil capture', ['pupillary capture', 'iris capture'], 'The optic has come forward through the pupil.'],
  ['lens rotated', ['rotation of the lens', 'lens rotation', 'rotated lens', 'iol rotation', 'rotated iol']],
  [
    'capsule contraction',
    ['capsular contraction', 'anterior capsule contraction', 'capsular phimosis', 'anterior capsular phimosis'],
  ],
  ['posterior capsule opacification', ['pco', 'posterior capsular opacification', 'capsule opacification']],
  ['ptosis', []],
  ['other', []],
]);

export const formulas = vocabulary('formula', [
  ['SRK/T', ['srk-t', 'srkt']],
  ['Holladay 1', ['holladay i', 'holladay']],
  ['Hoffer Q', ['hofferq']],
  ['Haigis', []],
  ['T2', []],
  ['other', ["the biometer's own", 'other formula']],
]);

export const lengthAdjustments = vocabulary('axial length adjustment', [
  ['none', ['unadjusted']],
  ['Wang-Koch 2011', ['wang koch 2011']],
  ['Wang-Koch 2018', ['wang koch 2018']],
  ['Cooke-modified', ['cmal', 'cooke modified']],
]);

export const precautions = vocabulary('precaution', [
  ['floppy iris', ['ifis', 'intracameral phenylephrine', 'alpha-blocker']],
  ['reverse pupillary block', ['reverse pupil block', 'lens-iris retropulsion']],
  ['low bottle', ['low infusion pressure', 'low bottle height']],
  ['capsule dye', ['dye']],
  ['weak zonule', ['zonular support']],
  ['tension ring ready', ['ring ready', 'tension ring on standby']],
  ['vitrectomy set ready', ['vitrector ready']],
  ['sulcus lens ready', ['spare lens ready', 'three-piece lens ready']],
  ['axis marking upright', ['axis marked sitting']],
  ['no hydrodissection', ['posterior polar']],
  ['small pupil', ['pupil aid ready']],
  ['pressure lowering', ['oculopression']],
  ['soft shell', ['soft-shell technique'], 'Dispersive viscoelastic against the cornea, cohesive beneath it.'],
  ['steroid cover', [], 'Steroid before and after the operation, against inflammation.'],
  ['none needed', []],
]);

export const codeSystems = vocabulary('code system', [
  ['ICD-10-CM', ['icd10cm']],
  ['ICD-10-PCS', ['icd10pcs']],
  ['ICD-10', ['icd10']],
  ['OPCS-4', ['opcs', 'opcs4']],
  ['LOINC', []],
  ['CPT', []],
  ['SNOMED CT', ['snomed']],
  ['local', ['department']],
]);

export const signatureMeanings = vocabulary('meaning of a signature', [
  ['author', ['written by']],
  ['supervisor', ['co-signer', 'countersigned']],
  ['verifier', ['verified by']],
]);
