import type { SpokenAmount, SpokenSection } from './phrase.ts';

const clockHour: SpokenAmount = { unit: "o'clock", bare: 'after at', possible: [1, 12], whole: true };
const position: SpokenAmount = { unit: '°', bare: 'after at', possible: [0, 360], bareWithin: [13, 360], whole: true };
const planeWords = 'incision|wound|section|tunnel|approach|entry|cut';
const sideWords =
  '(side+port|side+ports|paracentesis|paracenteses|paracentesises|para|paras|stab incision|stab incisions|side port incision|side port incisions|side incision|side incisions|second instrument port|accessory incision|accessory incisions|stab|stabs|sp|sps|s p)';

/** Main incision and side-ports. */
export function incisionsSpoken(): SpokenSection {
  return {
    subjects: [
      {
        id: 'main incision',
        named: [
          '[the] main [corneal|phaco|temporal] (incision|wound|section|port|entry)',
          '[the] (incision|wound|section|corneal incision|phaco incision|primary incision|cataract incision|corneal wound|corneal section|main)',
          'the cut',
        ],
        heard: ['in season', 'main in season', 'main precision', 'in scission', 'main in scission', 'insertion'],
      },
      {
        id: 'side-port',
        named: [sideWords],
        heard: [
          'site port',
          'site ports',
          'sight port',
          'sight ports',
          'side pot',
          'side pots',
          'side sport',
          'cider port',
          'side court',
          'para sentences',
          'para centesis',
          'para synthesis',
          'paris and thesis',
          'par a centesis',
          'para sen tesis',
        ],
      },
    ],
    fields: [
      {
        path: 'incisions[main].width',
        about: ['main incision'],
        called: ['[incision|wound] width'],
        amounts: [
          {
            unit: 'mm',
            also: { mL: 1 },
            bare: 'subject',
            possible: [1, 14],
            usual: [1.6, 7],
            bareWithin: [1, 12],
            byDefault: 'before a position',
          },
        ],
        forms: [
          {
            said: [
              '(went in|entered|entry|in|opened|enter) (with|using|through) [a] {number} (millimetre|mm) (keratome|blade|knife)',
              '{number} (millimetre|mm) (keratome|incision knife)',
            ],
            write: '{} mm',
            implied: true,
          },
        ],
      },
      {
        path: 'incisions[main].plane',
        about: ['main incision'],
        values: [
          {
            value: 'clear corneal',
            said: [`clear [-] (corneal|cornea) [(${planeWords})]`, '(cci|c c i)', 'corneal (incision|tunnel)'],
            heard: [
              'clear colonial [incision]',
              'clear corn eel [incision]',
              'clear cornel [incision]',
              'clear kernel [incision]',
              'clear corner [incision]',
              'clear coronal [incision]',
              'clear carnal [incision]',
              'clear corneas [incision]',
            ],
          },
          {
            value: 'near-clear corneal',
            said: [
              `near [-] clear [-] (corneal|cornea) [(${planeWords})]`,
              `near clear [(${planeWords})]`,
              'near limbal [incision]',
            ],
          },
          {
            value: 'limbal',
            said: [
              `limbal [(${planeWords})]`,
              '(incision|wound) at the limbus',
              'limbus based incision',
              '(corneolimbal|corneo limbal|posterior limbal) [incision]',
            ],
            heard: ['limb all incision', 'limbel [incision]', 'limb or incision'],
          },
          {
            value: 'scleral tunnel',
            said: [
              `[frown] [shaped] scleral (tunnel|incision|pocket|section|tunnel incision|flap tunnel)`,
              '(sclerocorneal|sclero corneal|corneoscleral|corneo scleral|scleral corneal) (tunnel|incision|section|tunnel incision)',
              'frown incision',
              'scleral tunnelled incision',
            ],
            heard: ['skleral tunnel', 'scleral funnel', 'sclera tunnel', 'scleral tonal'],
          },
        ],
      },
      {
        path: 'incisions[main].architecture',
        about: ['main incision'],
        values: [
          {
            value: 'one plane',
            said: ['(one|single|1) [-] (plane|planed|plain)', 'uniplanar', 'uni planar', 'one step incision'],
          },
          {
            value: 'two planes',
            said: ['(two|2) [-] (plane|planes|planed)', 'biplanar', 'bi planar', 'two step incision'],
            heard: ['two (plain|plaine)'],
          },
          {
            value: 'three planes',
            said: ['(three|3) [-] (plane|planes|planed|step)', 'triplanar', 'tri planar', '(three|3) step incision'],
            heard: ['three (plain|plaine)'],
          },
        ],
      },
      {
        path: 'incisions[main].at',
        about: ['main incision'],
        called: [
          '[incision|wound] (axis|meridian|position)',
          '(on|at) [the] (axis|meridian|steep axis|steep meridian) [of]',
          'centred (on|at)',
        ],
        critical: true,
        amounts: [position, clockHour],
        forms: [
          {
            said: [
              '{place}',
              '(on|from|at|in) the {place} side',
              '{place} side',
              '(placed|positioned|made|sited) {place}',
              '{place} (limbus|approach|quadrant)',
              'at the {place} limbus',
              '(went in|entered|going in|approach) {place}',
            ],
            bound: true,
            part: 'sector',
          },
          {
            said: [
              '(went in|entered|going in|approached|entry|approach) {place}',
              '{place} (incision|wound|entry|section|main incision|main wound)',
              '{place} approach',
            ],
            part: 'sector',
          },
        ],
      },
      {
        path: 'incisions[main].enlarged-to',
        about: ['main incision'],
        called: [
          '[(later|then|and then|and later)] [$was] (enlarged|extended|widened|opened up|opened) to',
          '[incision|wound] (enlarged|extended|widened) to',
          '(incision|wound) [$was] (enlarged|extended|widened) to',
        ],
        amounts: [{ unit: 'mm', bare: 'named', namedOnly: true, possible: [1.5, 14] }],
      },
      {
        path: 'incisions[side-port].kind',
        about: ['side-port'],
        counts: true,
        forms: [
          {
            said: [
              `{count} [(new|further|additional|more|extra|small)] [corneal] [limbal] [temporal|nasal] ${sideWords}`,
              `${sideWords} (x|times|by) {number}`,
              `${sideWords} [,] {count} [,] at`,
              `${sideWords} [,] {count} in number`,
            ],
            write: '{}',
          },
        ],
        values: [{ value: '2', said: [`both ${sideWords}`, `${sideWords} x2`], implied: true }],
      },
      {
        path: 'incisions[side-port].at',
        about: ['side-port'],
        several: true,
        calledThen: ['(on|at) [the] (axis|meridian) [of]'],
        amounts: [
          { unit: '°', bare: 'subject', possible: [0, 360], bareWithin: [13, 360], whole: true },
          { unit: "o'clock", bare: 'subject', possible: [1, 12], whole: true },
        ],
        forms: [{ said: ['{place}', '{place} side'], bound: true, part: 'sector' }],
      },
    ],
    entries: {
      'incisions[main]': { kind: 'main' },
      'incisions[side-port]': { kind: 'side-port' },
    },
  };
}
