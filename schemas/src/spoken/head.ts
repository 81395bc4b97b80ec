import type { SpokenSection } from './phrase.ts';

const surgeon = 'surgeon';
const lensWords =
  '($lens|lens implantation|intraocular lens implantation|lens insertion|insertion of [a|an] $lens|implantation of [a|an] $lens|posterior chamber [intraocular] $lens)';
const joined = '(with|and|plus|/|-|+|with an|with a|and an|and a|&)';

/** The first lines of a note: date, procedure, who operated. The side is read on its own: see sides.ts. */
export function head(): SpokenSection {
  return {
    subjects: [
      { id: 'operation', named: ['[the] (operation|procedure|surgery)'] },
      { id: surgeon, named: ['[the] [(operating|primary)] (surgeon|operator)'] },
      { id: 'supervisor' },
      { id: 'duration' },
    ],
    fields: [
      {
        path: 'date',
        about: ['operation'],
        called: [
          '(operation date|date of [the] (operation|surgery|procedure)|date of op|surgery date|procedure date|operated on [the]|date)',
        ],
        forms: [
          {
            said: [
              '(operation date|date of [the] (operation|surgery|procedure)|surgery date|procedure date|operated on|done on|performed on|date of op|date|dated) [is|was] [the] {date}',
              '(operation|surgery|procedure) [performed|done|carried out] on [the] {date}',
            ],
          },
          { said: ['{date}', 'on [the] {date}'], implied: true },
        ],
      },
      {
        path: 'procedure',
        about: ['operation'],
        called: ['procedure'],
        values: [
          {
            value: 'phacoemulsification with lens',
            said: [
              `$phaco ${joined} ${lensWords}`,
              `$phaco ${joined} (foldable|acrylic|new) ${lensWords}`,
              '$phaco (iol|lens implant|intraocular lens|lens|i o l)',
              `(cataract (extraction|surgery|removal) (with|by|using) $phaco ${joined} ${lensWords})`,
              `$phaco [cataract] (surgery|extraction) ${joined} ${lensWords}`,
              `$phaco of [the] (cataract|lens) ${joined} ${lensWords}`,
              `(small incision cataract surgery|cataract surgery) by $phaco ${joined} ${lensWords}`,
            ],
            heard: [
              '(fake oh|faker|fay co|fakeo|faco|fako|vaco|fake o) [emulsification] (and|with|plus) [(a|toric|monofocal)] (lens implant|lens|iol|i o l|implant)',
            ],
          },
          ...(
            [
              ['lens.kind', 'monofocal', 'mono+focal'],
              ['lens.kind', 'multifocal', '(multi+focal|tri+focal|bi+focal)'],
              ['lens.kind', 'extended depth of focus', '(extended depth of focus|edof)'],
              ['lens.pieces', '1', '(single|one) [-] piece'],
              ['lens.pieces', '3', 'three [-] piece'],
            ] as const
          ).map(([path, value, said]) => ({
            value: 'phacoemulsification with lens',
            also: [[path, value]] as const,
            said: [`$phaco ${joined} ${said} ${lensWords}`],
          })),
          {
            value: 'phacoemulsification with lens',
            also: [['lens.kind', 'toric']],
            said: [`$phaco ${joined} toric $lens [implantation]`, `$phaco ${joined} toric`],
          },
          {
            value: 'phacoemulsification with lens',
            implied: true,
            said: [
              'cataract (extraction|surgery|removal|operation) (with|and|plus) ([a] lens implant|[an] intraocular lens|[an] iol|i o l|lens implantation|intraocular lens implantation)',
            ],
          },
          {
            value: 'phacoemulsification',
            said: [
              '$phaco',
              '$phaco (cataract|surgery|procedure|cataract surgery|cataract extraction|extraction)',
              '(cataract (extraction|surgery|removal) (with|by|using) $phaco)',
            ],
            heard: [
              'fake oh',
              'fake o',
              'faco',
              'fako',
              'fay co',
              'faker',
              'fake oh emulsification',
              'faker emulsification',
              'fake of emulsification',
            ],
          },
          {
            value: 'manual small-incision extraction with lens',
            said: [
              'manual small incision [cataract] (surgery|extraction|operation) [(with|and|plus) [a|an] ($lens|lens implantation)]',
              '(msics|sics|m s i c s|s i c s|manual sics) [(with|and|plus|/) [a|an] ($lens|lens implantation)]',
              'manual (sutureless|small incision) (surgery|extraction|cataract surgery|cataract extraction)',
              'manual small incision cataract surgery (with|and|plus) [a|an] ($lens|lens implantation)',
              'small incision (extracapsular|manual) [cataract] (surgery|extraction) [(with|and|plus) [a|an] ($lens|lens implantation)]',
            ],
          },
          {
            value: 'extracapsular extraction with lens',
            said: [
              '[conventional|converted to|conversion to] extra+capsular [cataract|lens] (extraction|surgery|operation) [(with|and|plus) [a|an] ($lens|lens implantation)]',
              '(ecce|e c c e|extra+cap) [(with|and|plus|/) [a|an] ($lens|lens implantation)]',
              '[(finished as|ended as|converted to|conversion to)] [an] extra+capsular [(with|and|plus) [a|an] ($lens|lens implantation)]',
            ],
          },
          { value: 'intracapsular extraction', said: ['intra+capsular [cataract|lens] extraction', 'icce'] },
          {
            value: 'lens exchange',
            said: [
              '($lens|aciol|ac iol) exchange',
              'exchange of [the|an|a] [(dislocated|opacified|subluxed|wrong)] $lens',
              '(exchanged|exchanging) [the] $lens',
              '$lens (explantation|removal) and (exchange|replacement)',
            ],
          },
          {
            value: 'secondary lens',
            said: [
              'secondary $lens [(implantation|implant|insertion|placement)]',
              'secondary (implantation|insertion) of [a|an] [iris claw|scleral fixated|anterior chamber] $lens',
              'secondary (iris claw|scleral fixated|anterior chamber|sulcus) $lens [implantation]',
            ],
          },
          {
            value: 'lens repositioning',
            said: [
              '$lens (repositioning|reposition|re positioning|refixation|rotation)',
              '(repositioning|re positioning|reposition|refixation|rotation) of [the|a|an] [(dislocated|subluxed|decentred|toric|rotated|subluxated|existing)] $lens',
              '[the] [(dislocated|subluxed|decentred|toric|rotated|subluxated)] $lens [$was] (repositioned|re positioned)',
            ],
          },
          {
            value: 'peripheral iridotomy',
            orElse: 'A peripheral iridotomy was made.',
            implied: true,
            said: [
              '[surgical|laser] peripheral (iridotomy|iridectomy)',
              'surgical (iridotomy|iridectomy)',
              'laser (iridotomy|iridectomy)',
            ],
          },
        ],
      },
      {
        path: 'which-eye',
        about: ['operation'],
        values: [
          { value: 'first', said: ['first eye'] },
          { value: 'second', said: ['second eye'] },
        ],
      },
      {
        path: 'urgency',
        about: ['operation'],
        values: ['elective', 'urgent', 'emergency'].map((urgency) => ({
          value: urgency,
          said: [`${urgency} (operation|surgery|procedure|case)`, urgency],
        })),
      },
      {
        path: 'team[surgeon].grade',
        about: [surgeon],
        called: ['surgeon grade', 'grade of [the] surgeon', '(operating|primary) surgeon'],
        values: [
          {
            value: 'consultant',
            said: [
              '(consultant|attending) (surgeon|operating|ophthalmologist|performing|surgery)',
              '(surgeon|operator|operated by|performed by|done by|carried out by|surgery by|surgeon grade) [is|was] [a|the|me the] (consultant|attending)',
              '(i am|im) (a|the) (consultant|attending)',
              'consultant case',
            ],
          },
          {
            value: 'senior trainee',
            said: [
              '(trainee|registrar|resident|specialist registrar) (surgeon|operating|performing|surgery|ophthalmologist)',
              '(surgeon|operator|operated by|performed by|done by|carried out by|surgery by|surgeon grade) [is|was] [a|the|me the|our] [senior|surgical] (trainee|registrar|resident)',
              '(i am|im) (a|the) [senior|surgical] (trainee|registrar|resident)',
              'trainee case',
            ],
          },
          {
            value: 'fellow',
            said: [
              'fellow (surgeon|operating|performing)',
              '(i|me) (did|operated|performed) [(it|this|this one|the case)] as [the|a] fellow',
              '(by me|me|i operated) as [the|a] fellow',
              '(surgeon|operator|operated by|performed by|done by|carried out by|surgery by|surgeon grade) [,] [is|was] [a|the|me the|our] [(cornea|anterior segment|surgical|retina|glaucoma)] fellow',
              '(i am|im) (a|the) [(cornea|anterior segment|surgical|retina|glaucoma)] fellow',
            ],
          },
          { value: 'consultant', implied: true, said: ['by [(a|the|our)] (consultant|attending)'] },
          { value: 'senior trainee', implied: true, said: ['by [(a|the|our)] (trainee|registrar|resident)'] },
          { value: 'fellow', implied: true, said: ['by [(a|the|our)] fellow'] },
          { value: 'consultant', bound: true, said: ['consultant', 'attending'] },
          { value: 'consultant', implied: true, said: ['consultant'] },
          { value: 'senior trainee', bound: true, said: ['trainee', 'registrar', 'resident'] },
        ],
      },
      {
        path: 'team[supervisor].grade',
        about: ['supervisor'],
        values: [
          {
            value: 'consultant',
            said: [
              'consultant (supervising|supervisor|assisting|supervised|present)',
              '(supervised by|assisted by|supervisor|under supervision of|under the supervision of|with) [a|the] consultant [(supervising|supervision|supervisor)]',
              'under consultant supervision',
            ],
          },
        ],
      },
      {
        path: 'free-text[duration]',
        about: ['duration'],
        called: [
          '(took|lasted|duration|duration of [the] (surgery|operation|procedure)|operating time|operation time|surgical time|surgery time|total time|time taken|the (case|operation|procedure|whole thing|surgery) (took|lasted)|(case|operation|procedure|surgery) (took|lasted)|theatre time|skin to skin|the whole (thing|case|procedure|operation) [(was|took)]|total (operating|operative|surgical) time|operative time|in (all|total))',
        ],
        amounts: [{ unit: 'min', bare: 'never', namedOnly: true, possible: [1, 400], also: { h: 60 } }],
        values: [
          {
            value: '60 min',
            said: [
              '(took|lasted|taken|finished in|done in) (an|about an|around an|just under an) hour',
              'hour long (operation|procedure)',
            ],
          },
        ],
        forms: [
          {
            said: [
              '{number} minute (operation|procedure|surgery|case)',
              'all (done|finished|over) in {number} minutes',
              '(done|finished|completed|over) in {number} minutes',
              '[from] start to finish {number} minutes',
              '{number} minutes [,] [that|this|it] took',
              '{number} minutes (in total|total|start to finish|skin to skin|from start to finish|altogether|all told|all in|overall|in all)',
            ],
            write: '{} min',
          },
        ],
      },
    ],
    entries: {
      'team[surgeon]': { role: 'surgeon' },
      'team[supervisor]': { role: 'supervisor' },
    },
  };
}
