import { siteWords } from '../notation/site.ts';
import { vocabulary } from '../notation/words.ts';

export const anaesthesiaKinds = vocabulary('anaesthesia', [
  ['topical', []],
  ['intracameral', []],
  ['sub-Tenon', ["sub-tenon's", 'sub tenon', "sub tenon's", 'sub tenons', 'sub-tenons']],
  ['peribulbar', ['peribulbar block']],
  ['retrobulbar', ['retrobulbar block']],
  ['general', ['general anaesthetic', 'general anesthetic', 'ga']],
  ['sedation', ['iv sedation', 'intravenous sedation']],
]);

export const antiseptics = vocabulary('antiseptic', [
  ['povidone-iodine', ['povidone iodine', 'iodine', 'pvp-i']],
  ['chlorhexidine', ['aqueous chlorhexidine']],
]);

export const seats = vocabulary(
  'seat',
  siteWords.map((word) => [word, word === 'superior' ? ['superiorly', 'at the head'] : [`${word}ly`]] as const),
);

export const incisionKinds = vocabulary('kind of incision', [
  ['main', ['main wound', 'main incision']],
  ['side-port', ['side port', 'sideport', 'paracentesis']],
  ['relaxing', ['limbal relaxing', 'arcuate', 'opposite clear corneal']],
  ['other', ['hook incision', 'port']],
]);

export const incisionPlanes = vocabulary('place of the wound', [
  ['clear corneal', ['clear cornea', 'corneal']],
  ['near-clear corneal', ['near clear corneal', 'near clear']],
  ['limbal', []],
  ['scleral tunnel', ['scleral', 'sclerocorneal tunnel']],
]);

export const architectures = vocabulary('architecture', [
  ['one plane', ['uniplanar', 'single plane', 'stab']],
  ['two planes', ['biplanar', 'two plane']],
  ['three planes', ['triplanar', 'three plane', 'stepped', 'hinged']],
]);

export const ovdKinds = vocabulary('viscoelastic', [
  ['cohesive', []],
  ['dispersive', []],
  ['viscoadaptive', ['viscous-adaptive']],
  ['combined', ['combination']],
]);

export const ovdAgents = vocabulary('viscoelastic agent', [
  ['sodium hyaluronate', ['hyaluronate', 'ha']],
  ['hydroxypropyl methylcellulose', ['hpmc', 'methylcellulose']],
  ['chondroitin sulphate with hyaluronate', ['chondroitin sulfate with hyaluronate']],
]);

export const dyes = vocabulary('dye', [
  ['trypan blue', ['trypan']],
  ['brilliant blue', []],
  ['indocyanine green', ['icg']],
]);

export const pupilAids = vocabulary('pupil aid', [
  ['iris hooks', ['hooks']],
  ['expansion ring', ['pupil expansion ring', 'pupil ring']],
  ['stretch', ['pupil stretch', 'stretching']],
  ['intracameral phenylephrine', ['phenylephrine']],
  ['viscomydriasis', []],
  ['sphincterotomies', []],
]);

export const capsulotomyTechniques = vocabulary('capsulotomy technique', [
  ['continuous curvilinear', ['ccc', 'capsulorhexis', 'continuous curvilinear capsulorhexis', 'rhexis']],
  ['can-opener', ['can opener']],
  ['laser', ['femtosecond laser']],
  ['radiofrequency', ['diathermy']],
  ['envelope', ['linear']],
]);

export const capsulotomyOutcomes = vocabulary('outcome of the capsulotomy', [
  ['complete', ['continuous', 'intact']],
  ['incomplete', []],
  ['extended to the periphery', ['extended', 'run out']],
  ['rescued', ['extended and rescued']],
  ['radial tear', ['torn', 'anterior tear']],
  ['converted to can-opener', ['converted to can opener']],
]);

export const nucleusTechniques = vocabulary('nucleus technique', [
  ['divide and conquer', []],
  ['stop and chop', []],
  ['horizontal chop', ['phaco chop', 'chop']],
  ['vertical chop', []],
  ['quick chop', []],
  ['prechop', ['pre-chop']],
  ['flip', ['phaco flip', 'supracapsular']],
  ['aspiration', ['lens aspiration', 'lens washout']],
  ['manual expression', ['expression', 'nucleus expression']],
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
  ['continuous', []],
  ['pulse', ['pulsed']],
  ['burst', []],
  ['torsional', ['torsional continuous']],
  ['longitudinal and torsional', ['combined']],
]);

export const cortexMethods = vocabulary('cortex method', [
  ['coaxial', ['coaxial irrigation-aspiration', 'coaxial i/a']],
  ['bimanual', ['bimanual irrigation-aspiration', 'bimanual i/a']],
  ['manual', ['dry aspiration']],
]);

export const stages = vocabulary('stage of the operation', [
  ['anaesthesia', []],
  ['incision', []],
  ['capsulotomy', ['capsulorhexis']],
  ['hydrodissection', []],
  ['nucleus', ['sculpting', 'phacoemulsification', 'chopping', 'quadrant removal', 'removal of the last quadrant']],
  ['cortex', ['irrigation and aspiration', 'cortex removal']],
  ['polishing', ['capsule polishing']],
  ['ring insertion', []],
  ['lens insertion', ['lens implantation']],
  ['viscoelastic removal', ['ovd removal']],
  ['closure', ['end of the operation']],
  ['after the operation', ['postoperative']],
]);
