import type { SpokenSection } from './phrase.ts';

/** Where the lens lies, how it is centred, and what was left behind it. */
export function lensPlaceSpoken(): SpokenSection {
  return {
    subjects: [],
    fields: [
      {
        path: 'lens.placed',
        about: ['lens'],
        critical: true,
        values: [
          {
            value: 'capsular bag',
            part: 'place',
            bound: true,
            byDefault: true,
            said: [
              'in the capsular bag',
              '(in|into|inside|within|to) [the] [capsular] bag',
              '[the] capsular bag',
              '(in|into|within) the capsule',
              'bag',
              'endocapsular',
              '(in the bag|endocapsular) placement',
              'bag [-] fixated',
            ],
            heard: ['(in|and|into) (the|a) (back|beg|bug|badge)', 'in the capsular (back|beg)', 'in a bag'],
          },
          {
            value: 'sulcus',
            part: 'place',
            bound: true,
            byDefault: true,
            said: [
              'in the sulcus',
              '(in|into|to|within) [the] [ciliary] sulcus',
              '[the] ciliary sulcus',
              'sulcus [-] [(fixated|placed|fixation|supported|placement)]',
            ],
            heard: [
              '(in|and|into) the (sulkus|sulk us|soulcus|sulk|sucker|silky)',
              '(silly airy|silla re|ciliary) (sulk us|soulcus|sulkus)',
            ],
          },
          {
            value: 'sulcus with optic capture',
            part: 'capture',
            said: [
              '[with] optic [-] (capture|captured) [(in|through|behind|of) [the] (rhexis|capsulorhexis|capsulotomy|bag|anterior capsulorhexis)]',
              '(capture|capturing) [of] [the] optic',
              'optic $was captured',
              '(captured|capturing) the optic [(behind|in|through|under|with|by) [the] (rhexis|capsulorhexis|capsulotomy)]',
              '[the] optic (captured|buttonholed)',
              '[with] reverse optic capture',
            ],
            heard: ['(optic|object|optical|up tick|optics) (captcha|capture|rapture)'],
            deniedAs: ['free-text[capture]', 'The optic was not captured.'],
          },
          {
            value: 'sulcus with optic capture',
            part: 'capture',
            denies: true,
            as: ['free-text[capture]', 'The optic was not captured.'],
            said: ['[the] optic $not captured'],
          },
          {
            value: 'anterior chamber',
            part: 'place',
            bound: true,
            said: ['(in|into) the anterior chamber', 'anterior chamber'],
          },
          {
            value: 'iris, behind',
            part: 'place',
            said: [
              'retro+pupillary',
              'retro [-] pupillary',
              'retro+iridal',
              'retro+iris',
              '(fixed|fixated|enclavated|clipped|clawed|attached|placed) [(posteriorly|to)] behind the iris',
              '(posterior|retropupillary) iris (fixation|fixated|enclavation)',
              '(fixed|fixated|enclavated|attached) to the (posterior|back) (iris|surface of the iris)',
            ],
            heard: ['retro (pupil airy|people area|puppy larry|pupil re)'],
          },
          {
            value: 'iris, behind',
            part: 'place',
            bound: true,
            said: ['behind the iris', 'posterior to the iris', '(behind|posterior to) the pupil'],
          },
          {
            value: 'iris, in front',
            part: 'place',
            bound: true,
            said: [
              '(fixed|fixated|enclavated|clipped|attached) (to the anterior iris|in front of the iris|to the iris)',
              'in front of the iris',
              'pre+pupillary',
            ],
          },
          {
            value: 'scleral fixation',
            part: 'place',
            said: [
              '(scleral|sclerally|transscleral|trans scleral|transsclerally|intrascleral|intra scleral) [-] [haptic|lens] (fixated|fixation|fixed|sutured|haptic fixation|suture fixation|suturing)',
              '(sutured|fixed|fixated|secured|refixed|anchored|attached|refixated) to the sclera',
              '(haptics|haptic) [$was] (externalised|tucked|buried|fixed) (in|into|through) [the] (sclera|scleral tunnels|scleral pockets|scleral tunnel)',
              '(fixed|fixated|secured) (sclerally|in the sclera)',
            ],
            heard: ['(skleral|sclera|square all|scler all) (fixated|fix stated|fixation|fixed)'],
          },
          {
            value: 'none',
            part: 'place',
            said: [
              '(no|without) [(a|an|any)] $lens [$was|were] (implanted|inserted|placed|put in|used|fitted|given)',
              '[(was|eye|patient|eye was|intentionally|deliberately)] left [(the eye|the patient|her|him)] aphakic',
              '$lens (was not|not|wasnt|could not be) (implanted|inserted|placed|put in)',
              'no lens implant',
              'no (iol|intraocular lens|implant)',
              'no lens was put in',
              'aphakic at (the end|the end of surgery|end of the operation)',
              'decided not to (implant|insert|place) [a|the] $lens',
            ],
          },
        ],
      },
      {
        path: 'lens.off-centre',
        about: ['lens'],
        values: [
          {
            value: 'centred',
            bound: true,
            said: [
              '$centred',
              'good centration',
              '[(bang|dead|right|nicely|well|sitting|sitting nicely|sits|exactly)] in the [very] (centre|middle)',
              '(centration|position) (good|excellent|satisfactory|perfect|confirmed)',
              'well positioned and centred',
              '(centred|centring) well',
              'well centred and stable',
            ],
            heard: ['(well|nicely) (centre|sent red|sent ted|scented|sent erred)'],
          },
          {
            value: 'centred',
            said: [
              '[the] $lens [$was] [(well|nicely|perfectly|properly|stable and|sitting|beautifully)] [well] (centred|central|centrally placed)',
              '(well centred|centred|central) $lens',
              'it (sits|lies|sat|lay) [(nicely|well|perfectly)] (centred|central|centrally)',
              '$lens (centration|position) (good|confirmed|excellent|satisfactory)',
              'good $lens centration',
              '$lens (centres|centred|centring) well',
            ],
          },
        ],
      },
      {
        path: 'lens.ovd-removed-behind',
        about: ['lens'],
        values: [
          {
            value: 'yes',
            said: [
              '[all] (viscoelastic|ovd|visco|visco elastic) [$was] [(thoroughly|carefully)] (removed|aspirated|washed out|cleared|evacuated|washed) [(from|out from)] (behind|underneath|under|beneath) [the] ($lens|optic)',
              '(removed|aspirated|washed out|cleared) [the] (viscoelastic|ovd|visco) [from] (behind|underneath|under|beneath) the ($lens|optic)',
            ],
          },
        ],
      },
    ],
  };
}
