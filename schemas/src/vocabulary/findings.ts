import { vocabulary } from '../notation/words.ts';

export const cataractKinds = vocabulary('cataract', [
  ['nuclear', ['nuclear sclerosis', 'nuclear sclerotic']],
  ['cortical', []],
  ['posterior subcapsular', ['psc', 'posterior sub-capsular']],
  ['posterior polar', []],
  ['anterior polar', []],
  ['white', ['mature', 'intumescent', 'white mature']],
  ['hypermature', ['morgagnian']],
  ['brunescent', ['brown', 'black']],
  ['traumatic', []],
  ['congenital', ['infantile']],
  ['after vitrectomy', ['post-vitrectomy']],
  ['steroid-induced', ['steroid']],
  ['clear lens', ['no cataract']],
  ['pseudophakia', ['lens implant in place']],
  ['aphakia', []],
  ['other', []],
]);

export const gradingScales = vocabulary('grading scale', [
  ['LOCS III', ['locs 3', 'locs'], 'Lens Opacities Classification System III.'],
  ['LOCS II', ['locs 2']],
  ['nuclear 1 to 4', ['1-4', '1 to 4']],
  ['nuclear 1 to 5', ['1-5', '1 to 5']],
]);

export const comorbidities = vocabulary('comorbidity', [
  ['glaucoma', []],
  ['ocular hypertension', []],
  ['age-related macular degeneration', ['macular degeneration', 'amd']],
  ['diabetes', ['diabetes mellitus']],
  ['diabetic retinopathy', []],
  ['diabetic macular oedema', ['diabetic macular edema']],
  ['amblyopia', []],
  ['corneal guttata', ['guttata', 'guttae', "fuchs' dystrophy", 'endothelial dystrophy']],
  ['corneal opacity', ['corneal pathology', 'corneal scar']],
  ['pseudoexfoliation', ['exfoliation', 'pxf']],
  ['phacodonesis', []],
  ['uveitis', []],
  ['high myopia', ['pathological myopia']],
  ['myopic maculopathy', []],
  ['epiretinal membrane', []],
  ['macular hole', []],
  ['retinal vein occlusion', []],
  ['previous retinal detachment', ['retinal detachment']],
  ['previous vitrectomy', ['vitrectomy', 'vitrectomised']],
  ['previous corneal refractive surgery', ['refractive surgery', 'lasik']],
  ['previous intravitreal injection', ['intravitreal injection', 'intravitreal injections']],
  ['previous trauma', ['trauma']],
  ['lens subluxation', ['ectopia lentis', 'subluxed lens']],
  ['narrow angle', ['angle closure']],
  ['optic neuropathy', []],
  ['blepharitis', []],
  ['dry eye', []],
  ['other', []],
]);

export const difficulties = vocabulary('difficulty', [
  ['small pupil', ['poor dilation']],
  ['floppy iris', ['alpha-blocker']],
  ['brunescent or white lens', ['brunescent', 'white lens', 'mature lens', 'hard nucleus']],
  ['no view of the fundus', ['no fundal view', 'vitreous opacity']],
  ['zonular weakness', ['weak zonule', 'zonular weakness or phacodonesis']],
  ['unable to lie flat', ['cannot lie flat']],
  ['unable to cooperate', ['uncooperative']],
  ['shallow chamber', ['shallow anterior chamber']],
  ['deep chamber', ['deep anterior chamber']],
  ['corneal opacity', ['poor corneal clarity', 'corneal haze']],
  ['deep-set eye', ['deep set eye', 'prominent brow']],
  ['vitrectomised eye', ['previous vitrectomy']],
  ['long eye', ['high myopia']],
  ['short eye', []],
  ['posterior polar cataract', ['posterior polar']],
  ['loose zonule after trauma', []],
  ['other', []],
]);

export const biometryMethods = vocabulary('biometry method', [
  ['optical', ['optical biometry', 'partial coherence', 'swept source', 'interferometry']],
  ['ultrasound contact', ['contact ultrasound', 'contact a-scan', 'applanation']],
  ['ultrasound immersion', ['immersion', 'immersion a-scan']],
]);

export const keratometryMethods = vocabulary('keratometry method', [
  ['automated', ['auto', 'autokeratometry', 'automatic']],
  ['manual', []],
  ['tomography', ['simulated', 'topography']],
]);

export const fundusViews = vocabulary('view of the fundus', [
  ['clear', ['good']],
  ['hazy', ['reduced', 'poor']],
  ['no view', ['none possible']],
]);

export const peripheryFindings = vocabulary('finding of the periphery', [
  ['flat', ['flat and attached', 'normal', 'attached']],
  ['lattice', ['lattice degeneration']],
  ['treated lattice', ['lattice, treated']],
  ['retinal hole', ['atrophic hole', 'holes']],
  ['treated retinal hole', []],
  ['retinal tear', ['tear', 'horseshoe tear']],
  ['treated retinal tear', ['treated tear', 'lasered tear']],
  ['white without pressure', []],
  ['posterior vitreous detachment', ['pvd']],
  ['detached', ['retinal detachment']],
  ['laser scars', []],
]);

export const maculopathyCategories = vocabulary('myopic maculopathy category', [
  ['0', ['category 0'], 'No myopic retinal degenerative lesion.'],
  ['1', ['category 1', 'tessellated'], 'Tessellated fundus.'],
  ['2', ['category 2', 'diffuse'], 'Diffuse chorioretinal atrophy.'],
  ['3', ['category 3', 'patchy'], 'Patchy chorioretinal atrophy.'],
  ['4', ['category 4', 'macular atrophy'], 'Macular atrophy.'],
]);
