import { expect, test } from 'vitest';
import { planAt, recordPlan, type RecordKind } from '@sideport/schemas';

/** What a field makes of a text: the term, or the remark. */
function meant(kind: RecordKind, path: string, text: string): unknown {
  const plan = planAt(recordPlan(kind), path.split('.'));
  const field = plan?.kind === 'list' ? plan.item : plan;
  if (field?.kind !== 'value') throw new Error(`there is no field ${path}`);
  const reading = field.notation.read(text);
  return reading.ok ? reading.value : reading.fault.message;
}

// The abbreviations are common practice, no source.
const understood: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  procedure: {
    'phacoemulsification with lens': [
      'Phaco with IOL',
      'phaco+IOL',
      'Phacoemulsification + IOL',
      'phacoemulsification with intraocular lens',
      'phaco/IOL',
      'phaco + PCIOL',
    ],
    'manual small-incision extraction with lens': ['MSICS with IOL', 'SICS with PCIOL'],
    'manual small-incision extraction': ['MSICS', 'SICS'],
    'extracapsular extraction with lens': ['ECCE + IOL', 'ECCE with IOL'],
    'extracapsular extraction': ['ECCE'],
    'intracapsular extraction': ['ICCE'],
    'secondary lens': ['secondary IOL implantation'],
    'lens exchange': ['IOL exchange'],
    'lens repositioning': ['IOL repositioning'],
  },
  urgency: { elective: ['routine'] },
  'which-eye': { first: ['1st'], second: ['2nd'] },
  'team.grade': { 'senior trainee': ['ST5', 'SpR'], 'junior trainee': ['ST2', 'SHO'] },
  'diagnosis.cataract': { complicated: ['uveitic'], nuclear: ['nuclear cataract'] },
  comorbidity: {
    pseudoexfoliation: ['PEX', 'PXF', 'PXF syndrome'],
    glaucoma: ['POAG', 'PACG', 'angle-closure glaucoma'],
    'age-related macular degeneration': ['ARMD', 'dry AMD', 'wet AMD'],
    'epiretinal membrane': ['ERM'],
    'diabetic retinopathy': ['NPDR', 'PDR', 'BDR'],
    'diabetic macular oedema': ['DMO', 'DME'],
    'retinal vein occlusion': ['CRVO', 'BRVO'],
    'corneal guttata': ['Fuchs dystrophy', 'Fuchs’ dystrophy', 'FECD', 'cornea guttata'],
    'previous corneal refractive surgery': ['previous LASIK', 'post-LASIK', 'PRK', 'RK'],
    'previous vitrectomy': ['previous PPV'],
    uveitis: ['anterior uveitis'],
    'previous trauma': ['ocular trauma'],
    'myopic maculopathy': ['myopic degeneration'],
    'Marfan syndrome': ["Marfan's syndrome"],
    'silicone oil in the eye': ['silicone oil'],
  },
  difficulty: {
    'floppy iris': ['IFIS'],
    'shallow chamber': ['shallow AC'],
    'deep chamber': ['deep AC'],
    'brunescent or white lens': ['dense nucleus', 'white cataract'],
    'zonular weakness': ['phacodonesis', 'weak zonules', 'loose zonules', 'zonulopathy'],
    'no view of the fundus': ['no red reflex'],
  },
  'preop.biometry.method': { optical: ['SS-OCT'], 'ultrasound immersion': ['immersion ultrasound'] },
  'preop.fundus.periphery': { 'white without pressure': ['WWOP'], 'no breaks': ['no retinal breaks'] },
  'plan.precautions': { 'soft shell': ['soft-shell technique'], 'steroid cover': ['steroid cover'] },
  'incisions.plane': {
    'clear corneal': ['CCI'],
    'scleral tunnel': ['sclerocorneal'],
    corneoscleral: ['corneoscleral'],
  },
  'incisions.architecture': { 'two planes': ['bi-planar', '2 planes'], 'three planes': ['3-plane', 'triplanar'] },
  'ovd.kind': { dispersive: ['viscodispersive'] },
  'pupil-aid.kind': {
    'iris hooks': ['iris retractors'],
    'expansion ring': ['pupil expander'],
    'intracameral adrenaline': ['intracameral epinephrine'],
    sphincterotomies: ['sphincterotomy'],
  },
  'nucleus.technique': {
    'divide and conquer': ['D&C', 'divide-and-conquer', 'four-quadrant'],
    'direct chop': ['direct chop'],
    'irrigating vectis': ['vectis'],
    viscoexpression: ['visco-expression'],
  },
  'cortex.method': { 'irrigation-aspiration': ['I/A', 'I & A'], manual: ['Simcoe cannula'] },
  'lens.placed': {
    'capsular bag': ['in-the-bag'],
    'scleral fixation': ['intrascleral'],
    'anterior chamber': ['ACIOL'],
  },
  'lens.material': { 'hydrophilic acrylic': ['hydrophilic'], 'hydrophobic acrylic': ['hydrophobic'] },
  'drugs.route': {
    oral: ['PO', 'p.o.'],
    intravenous: ['i.v.', 'IV'],
    subconjunctival: ['s/c'],
    intracameral: ['IC'],
    intravitreal: ['IVT'],
    intramuscular: ['IM'],
    'sub-Tenon': ['subtenon'],
  },
  'drugs.purpose': { mydriatic: ['cycloplegic'], 'non-steroidal': ['NSAID'], 'pressure lowering': ['IOP lowering'] },
  'closure.leak-test': { 'no leak': ['secure', 'sealed'] },
  'closure.sutures.gauge': { '7-0': ['7/0'] },
  'complications.what': {
    'raised pressure': ['IOP spike', 'high IOP'],
    'lens rotated': ['IOL rotation'],
    'lens damaged': ['IOL damage'],
    'vitreous loss': ['vit loss'],
    'Descemet detachment': ['DM detachment'],
    'posterior capsule rupture': ['rent in the posterior capsule', 'PC rent'],
    'anterior capsule tear': ['rhexis run-out'],
    'aqueous misdirection': ['malignant glaucoma'],
    'vitreous haemorrhage': ['vitreous hemorrhage'],
  },
  'complications.when': {
    capsulotomy: ['rhexis', 'CCC'],
    hydrodissection: ['hydro'],
    nucleus: ['phaco', 'sculpt', 'chop', 'quadrant removal'],
    cortex: ['I/A', 'cortex aspiration'],
    'lens insertion': ['IOL insertion', 'IOL implantation'],
  },
};

test.each(Object.entries(understood))('%s', (path, terms) => {
  for (const [term, texts] of Object.entries(terms))
    for (const text of [term, ...texts]) expect(meant('operation', path, text), text).toBe(term);
});

test('visits go by their name or by the time since the operation', () => {
  const terms: Readonly<Record<string, readonly string[]>> = {
    'day 1': ['1 day', 'D1'],
    'day 2': ['2 days'],
    'week 1': ['1 week'],
    'week 2': ['2 weeks'],
    'month 1': ['1 month', 'week 4', '4 weeks'],
    'week 6': ['6 weeks'],
    'month 2': ['2 months'],
    'month 3': ['3 months'],
    'year 1': ['1 year', '12 months'],
  };
  for (const [term, texts] of Object.entries(terms))
    for (const text of [term, ...texts]) expect(meant('follow-up', 'visit', text), text).toBe(term);
});

test('the capsule at a visit', () => {
  expect(meant('follow-up', 'capsule', 'PCO')).toBe('opacification');
  expect(meant('follow-up', 'capsule', 'mild PCO')).toBe('slight opacification');
  expect(meant('follow-up', 'capsule', 'YAG done')).toBe('opened by laser');
  expect(meant('follow-up', 'capsule', 'open')).toBe('open');
});

test('local anaesthesia is none of the kinds: which one is for the surgeon to say', () => {
  expect(meant('operation', 'anaesthesia.kinds', 'LA')).toContain('is not a known anaesthesia. Expected one of');
});
