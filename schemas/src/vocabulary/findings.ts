import { vocabulary } from '../notation/words.ts';

export const cataractKinds = vocabulary('cataract', [
  ['nuclear', ['nuclear sclerosis', 'nuclear sclerotic', 'nuclear cataract', 'ns']],
  ['cortical', ['cortical cataract']],
  ['posterior subcapsular', ['psc', 'pscc', 'posterior sub-capsular', 'posterior subcapsular cataract']],
  ['posterior polar', ['posterior polar cataract']],
  ['anterior polar', ['anterior polar cataract']],
  ['white', ['mature', 'intumescent', 'white mature', 'white cataract', 'mature cataract']],
  ['hypermature', ['morgagnian']],
  ['brunescent', ['brown', 'black']],
  ['traumatic', ['traumatic cataract']],
  ['congenital', ['infantile', 'congenital cataract']],
  [
    'complicated',
    ['complicated cataract', 'uveitic', 'uveitic cataract'],
    'From an inflammation or another disease within the eye.',
  ],
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
  [
    'glaucoma',
    [
      'open-angle glaucoma',
      'primary open-angle glaucoma',
      'poag',
      'angle-closure glaucoma',
      'primary angle-closure glaucoma',
      'pacg',
    ],
  ],
  ['ocular hypertension', ['oht']],
  [
    'age-related macular degeneration',
    ['macular degeneration', 'amd', 'armd', 'dry amd', 'wet amd', 'dry armd', 'wet armd'],
  ],
  ['diabetes', ['diabetes mellitus']],
  [
    'diabetic retinopathy',
    [
      'background diabetic retinopathy',
      'bdr',
      'non-proliferative diabetic retinopathy',
      'npdr',
      'proliferative diabetic retinopathy',
      'pdr',
    ],
  ],
  ['diabetic macular oedema', ['diabetic macular edema', 'dmo', 'dme']],
  ['amblyopia', []],
  [
    'corneal guttata',
    [
      'guttata',
      'guttae',
      'cornea guttata',
      "fuchs' dystrophy",
      'fuchs dystrophy',
      "fuchs' endothelial dystrophy",
      'fuchs endothelial dystrophy',
      "fuchs' endothelial corneal dystrophy",
      'fuchs endothelial corneal dystrophy',
      'fecd',
      'endothelial dystrophy',
    ],
  ],
  ['corneal opacity', ['corneal pathology', 'corneal scar', 'band keratopathy']],
  ['corneal graft', ['keratoplasty', 'previous corneal graft', 'previous keratoplasty']],
  ['keratoconus', []],
  ['pterygium', []],
  ['pseudoexfoliation', ['exfoliation', 'pseudoexfoliation syndrome', 'pxf', 'pxf syndrome', 'pex', 'pex syndrome']],
  ['phacodonesis', []],
  ['uveitis', ['anterior uveitis', 'previous uveitis', 'chronic uveitis', 'chronic anterior uveitis']],
  ['posterior synechiae', ['posterior synechia']],
  ['high myopia', ['pathological myopia']],
  ['myopic maculopathy', ['myopic degeneration', 'myopic macular degeneration']],
  ['epiretinal membrane', ['erm']],
  ['macular hole', []],
  ['macular scar', ['scar of the macula']],
  [
    'retinal vein occlusion',
    ['central retinal vein occlusion', 'crvo', 'branch retinal vein occlusion', 'brvo', 'rvo'],
  ],
  ['retinitis pigmentosa', []],
  ['previous retinal detachment', ['retinal detachment']],
  [
    'previous vitrectomy',
    ['vitrectomy', 'vitrectomised', 'vitrectomized', 'previous ppv', 'ppv', 'previous pars plana vitrectomy'],
  ],
  ['silicone oil in the eye', ['silicone oil']],
  ['previous trabeculectomy', ['trabeculectomy']],
  [
    'previous corneal refractive surgery',
    [
      'refractive surgery',
      'previous refractive surgery',
      'corneal refractive surgery',
      'lasik',
      'previous lasik',
      'post-lasik',
      'photorefractive keratectomy',
      'prk',
      'previous prk',
      'post-prk',
      'radial keratotomy',
      'rk',
      'previous rk',
      'post-rk',
    ],
  ],
  ['previous intravitreal injection', ['intravitreal injection', 'intravitreal injections']],
  ['previous trauma', ['trauma', 'ocular trauma', 'previous ocular trauma']],
  ['lens subluxation', ['ectopia lentis', 'subluxed lens', 'subluxated lens']],
  ['Marfan syndrome', ["marfan's syndrome", 'marfan']],
  ['aniridia', []],
  ['nanophthalmos', [], 'An eye that is small in all its parts, otherwise of normal form.'],
  ['nystagmus', []],
  ['narrow angle', ['angle closure']],
  ['optic neuropathy', []],
  ['blepharitis', []],
  ['dry eye', []],
  ['other', []],
]);

export const difficulties = vocabulary('difficulty', [
  ['small pupil', ['poor dilation', 'poorly dilating pupil', 'poorly dilated pupil']],
  ['floppy iris', ['alpha-blocker', 'ifis', 'floppy iris syndrome', 'intraoperative floppy iris syndrome']],
  [
    'brunescent or white lens',
    ['brunescent', 'white lens', 'white cataract', 'mature lens', 'mature cataract', 'hard nucleus', 'dense nucleus'],
  ],
  ['no view of the fundus', ['no fundal view', 'no red reflex', 'vitreous opacity']],
  [
    'zonular weakness',
    [
      'weak zonule',
      'weak zonules',
      'loose zonule',
      'loose zonules',
      'zonulopathy',
      'phacodonesis',
      'zonular weakness or phacodonesis',
    ],
  ],
  ['unable to lie flat', ['cannot lie flat']],
  ['unable to cooperate', ['uncooperative']],
  ['shallow chamber', ['shallow anterior chamber', 'shallow ac']],
  ['deep chamber', ['deep anterior chamber', 'deep ac']],
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
  [
    'optical',
    ['optical biometry', 'partial coherence', 'swept source', 'swept-source oct', 'ss-oct', 'interferometry'],
  ],
  ['ultrasound contact', ['contact ultrasound', 'contact a-scan', 'applanation']],
  ['ultrasound immersion', ['immersion', 'immersion a-scan', 'immersion ultrasound']],
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
  ['no breaks', ['no break', 'no retinal breaks', 'no holes or tears', 'no tears or holes']],
  ['lattice', ['lattice degeneration']],
  ['treated lattice', ['lattice, treated']],
  ['retinal hole', ['atrophic hole', 'holes']],
  ['treated retinal hole', []],
  ['retinal tear', ['tear', 'horseshoe tear']],
  ['treated retinal tear', ['treated tear', 'lasered tear']],
  ['white without pressure', ['wwop']],
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
