import { siteWords } from '../notation/site.ts';
import { withStrength } from '../notation/with-strength.ts';
import { vocabulary } from '../notation/words.ts';

export const anaesthesiaKinds = vocabulary('anaesthesia', [
  ['topical', []],
  ['intracameral', []],
  ['sub-Tenon', ["sub-tenon's", 'sub-tenons', 'subtenon', "subtenon's", 'subtenons']],
  ['peribulbar', ['peribulbar block']],
  ['retrobulbar', ['retrobulbar block']],
  ['general', ['general anaesthetic', 'general anesthetic', 'ga']],
  ['sedation', ['iv sedation', 'intravenous sedation']],
]);

export const antiseptics = withStrength(
  vocabulary('antiseptic', [
    ['povidone-iodine', ['povidone iodine', 'iodine', 'pvp-i']],
    ['chlorhexidine', ['aqueous chlorhexidine']],
  ]),
);

export const seats = vocabulary(
  'seat',
  siteWords.map((word) => [word, word === 'superior' ? ['superiorly', 'at the head'] : [`${word}ly`]] as const),
);

export const incisionKinds = vocabulary('kind of incision', [
  ['main', ['main wound', 'main incision']],
  ['side-port', ['side port', 'sideport', 'paracentesis']],
  ['sclerotomy', ['pars plana port', 'trocar']],
  ['relaxing', ['limbal relaxing', 'arcuate', 'opposite clear corneal']],
  ['other', ['hook incision', 'port']],
]);

export const incisionPlanes = vocabulary('place of the wound', [
  ['clear corneal', ['clear cornea', 'corneal', 'clear corneal incision', 'cci']],
  ['near-clear corneal', ['near clear corneal', 'near clear']],
  ['limbal', []],
  ['pars plana', ['scleral, pars plana']],
  ['corneoscleral', [], 'Through the junction of cornea and sclera.'],
  ['scleral tunnel', ['scleral', 'sclerocorneal', 'sclerocorneal tunnel', 'corneoscleral tunnel']],
]);

export const architectures = vocabulary('architecture', [
  ['one plane', ['uniplanar', 'single plane', '1 plane', '1-plane', 'stab']],
  ['two planes', ['biplanar', 'bi-planar', 'two plane', '2 planes', '2 plane', '2-plane']],
  ['three planes', ['triplanar', 'tri-planar', 'three plane', '3 planes', '3 plane', '3-plane', 'stepped', 'hinged']],
]);

export const ovdKinds = vocabulary('viscoelastic', [
  ['cohesive', ['viscocohesive']],
  ['dispersive', ['viscodispersive']],
  ['viscoadaptive', ['viscous-adaptive']],
  ['combined', ['combination']],
]);

export const ovdAgents = withStrength(
  vocabulary('viscoelastic agent', [
    ['sodium hyaluronate', ['hyaluronate', 'hyaluronic acid', 'ha']],
    ['hydroxypropyl methylcellulose', ['hpmc', 'methylcellulose']],
    ['chondroitin sulphate with hyaluronate', ['chondroitin sulfate with hyaluronate']],
  ]),
);

export const dyes = withStrength(
  vocabulary('dye', [
    ['trypan blue', ['trypan']],
    ['brilliant blue', []],
    ['indocyanine green', ['icg']],
  ]),
);

export const pupilAids = vocabulary('pupil aid', [
  ['iris hooks', ['hooks', 'iris retractors', 'pupil hooks']],
  ['expansion ring', ['pupil expansion ring', 'pupil ring', 'pupil expander']],
  ['stretch', ['pupil stretch', 'stretching']],
  ['intracameral phenylephrine', ['phenylephrine']],
  ['intracameral adrenaline', ['intracameral epinephrine']],
  ['viscomydriasis', []],
  ['sphincterotomies', ['sphincterotomy']],
]);

export const capsulotomyTechniques = vocabulary('capsulotomy technique', [
  ['continuous curvilinear', ['ccc', 'capsulorhexis', 'continuous curvilinear capsulorhexis', 'rhexis']],
  ['can-opener', ['can opener']],
  ['laser', ['femtosecond laser']],
  ['radiofrequency', ['diathermy']],
  ['envelope', ['linear']],
  ['vitrector', ['vitrectorhexis', 'with the vitrector']],
]);

export const capsulotomyOutcomes = vocabulary('outcome of the capsulotomy', [
  ['complete', ['continuous', 'intact']],
  ['incomplete', []],
  ['extended to the periphery', ['extended', 'run out']],
  ['rescued', ['extended and rescued']],
  ['radial tear', ['torn', 'anterior tear']],
  ['converted to can-opener', ['converted to can opener', 'ran out, converted to can-opener']],
]);

export const nucleusTechniques = vocabulary('nucleus technique', [
  ['divide and conquer', ['d&c', 'four-quadrant', 'four quadrants']],
  ['stop and chop', []],
  ['horizontal chop', ['phaco chop', 'chop']],
  ['vertical chop', []],
  ['quick chop', []],
  ['direct chop', [], 'Chopped without a groove; whether horizontally or vertically is not said.'],
  ['prechop', ['pre-chop']],
  ['flip', ['phaco flip', 'supracapsular']],
  ['aspiration', ['lens aspiration', 'lens washout']],
  ['manual expression', ['expression', 'nucleus expression']],
  ['irrigating vectis', ['vectis'], 'Delivered whole on a vectis, with the flow of the infusion.'],
  ['viscoexpression', ['visco-expression'], 'Delivered whole by the pressure of viscoelastic.'],
  ['manual fragmentation', ['sandwich', 'phacofragmentation']],
]);

export const phacoSteps = vocabulary('step', [
  ['sculpt', ['sculpting', 'groove', 'grooving']],
  ['chop', ['chopping', 'first chop']],
  ['quadrant removal', ['quadrants', 'fragment removal', 'segment removal']],
  ['epinucleus', ['epinucleus removal']],
  ['whole nucleus', ['all steps', 'throughout']],
]);

export const ultrasoundModes = vocabulary('ultrasound mode', [
  ['continuous', ['linear continuous', 'continuous linear']],
  ['pulse', ['pulsed']],
  ['burst', []],
  ['torsional', ['torsional continuous']],
  ['longitudinal', [], 'Whether continuous, pulsed or in bursts is not said.'],
  ['longitudinal and torsional', ['combined']],
]);

export const cortexMethods = vocabulary('cortex method', [
  ['coaxial', ['coaxial irrigation-aspiration', 'coaxial i/a']],
  ['bimanual', ['bimanual irrigation-aspiration', 'bimanual i/a']],
  ['manual', ['dry aspiration', 'simcoe cannula']],
  [
    'irrigation-aspiration',
    ['i/a', 'i&a', 'irrigation and aspiration', 'automated i/a'],
    'By machine; whether coaxially or bimanually is not said.',
  ],
]);

export const stages = vocabulary('stage of the operation', [
  ['anaesthesia', []],
  ['incision', []],
  ['capsulotomy', ['capsulorhexis', 'rhexis', 'ccc']],
  ['hydrodissection', ['hydro']],
  [
    'nucleus',
    [
      'phacoemulsification',
      'phaco',
      'sculpting',
      'sculpt',
      'chopping',
      'chop',
      'quadrant removal',
      'removal of the last quadrant',
    ],
  ],
  [
    'cortex',
    ['irrigation and aspiration', 'irrigation-aspiration', 'i/a', 'i&a', 'cortex removal', 'cortex aspiration'],
  ],
  ['polishing', ['capsule polishing']],
  ['ring insertion', []],
  ['lens insertion', ['lens implantation', 'iol insertion', 'iol implantation']],
  ['viscoelastic removal', ['ovd removal']],
  ['closure', ['end of the operation']],
  ['after the operation', ['postoperative']],
]);
