import type { SpokenSection } from './phrase.ts';

const rhexis = '[continuous] [curvilinear] [anterior] (capsulorhexis|capsulo rhexis|rhexis|ccc|c c c|capsulotomy)';
const slightly =
  '[(slightly|a little|a bit|a wee bit|wee bit|mildly|somewhat|minimally|a touch|just|marginally|very slightly|a fraction|bit|slight)]';
const off =
  '(eccentric|off|off+centre|decentred|displaced|decentration|eccentrically|de centred|eccentrically placed|off centred)';

function toward(direction: string, forms: string): { value: string; said: string[] } {
  return {
    value: `toward ${direction}`,
    said: [
      `${slightly} ${off} (${forms})`,
      `${slightly} ${off} (to|towards|toward|to the|towards the|toward the) (${forms}) [side]`,
      `${slightly} (${forms}) (eccentric|eccentricity|decentration|decentred)`,
      `${slightly} (${forms}) of centre`,
    ],
  };
}

/** The opening of the anterior capsule. */
export function capsulotomySpoken(): SpokenSection {
  return {
    subjects: [
      {
        id: 'capsulotomy',
        named: [rhexis],
        heard: [
          '[capsulo] (rex is|wrecks is|rexes|wrexis|rexus|wreckses|rec sis|reck sis|wreck sis|rexis|rekses|wrecks this|rack sis|rex sis)',
          '(capsular|capsule o|capsule or|capsular or|cap slow|capsule of|cap so low|capture low|caps you low|cap seal o|capsule oh) (rex is|rexis|rhexis|wrecks is|rexes|wrexis|wreck sis|rexus)',
        ],
      },
    ],
    fields: [
      {
        path: 'capsulotomy.technique',
        about: ['capsulotomy'],
        values: [
          {
            value: 'continuous curvilinear',
            said: [
              'continuous curvilinear [capsulorhexis|capsulo rhexis|rhexis|capsulotomy|anterior capsulotomy|anterior capsulorhexis]',
            ],
          },
          {
            value: 'can-opener',
            said: [
              'can+opener [(capsulotomy|technique|anterior capsulotomy|capsulorhexis|fashion)]',
              'capsulotomy can opener',
            ],
            heard: ['can opening capsulotomy', 'cannot open a capsulotomy', 'kan opener'],
          },
          { value: 'envelope', said: ['(envelope|linear) (capsulotomy|technique)'] },
          { value: 'laser', said: ['(laser|femtosecond|femtosecond laser) capsulotomy'] },
        ],
      },
      {
        path: 'capsulotomy.diameter',
        about: ['capsulotomy'],
        called: ['(capsulorhexis|capsulotomy|rhexis) (diameter|size)'],
        amounts: [
          { unit: 'mm', also: { mL: 1 }, bare: 'subject', possible: [2, 9], usual: [4, 6.9], bareWithin: [3, 8] },
        ],
      },
      {
        path: 'capsulotomy.aimed',
        about: ['capsulotomy'],
        called: ['(aimed at|intended|aiming for|aimed for) [a]'],
        amounts: [{ unit: 'mm', bare: 'never', namedOnly: true, possible: [2, 9] }],
      },
      {
        path: 'capsulotomy.off-centre',
        about: ['capsulotomy'],
        values: [
          {
            value: 'centred',
            bound: true,
            said: [
              '$centred',
              'well centred [on|over] [the] (pupil|visual axis|lens)',
              'centred on the (pupil|visual axis)',
              '[(bang|dead|right|nicely|well|sitting|exactly)] in the [very] (centre|middle)',
              '(and|fully and) (centred|well centred)',
            ],
            heard: ['(well|nicely) (centre|sent red|sent ted|scented|centre|century|sent erred)', 'well sent it'],
          },
          {
            value: 'centred',
            said: [
              '(well centred|centred|central|centrally placed|nicely centred) [continuous] [curvilinear] (capsulorhexis|rhexis|capsulotomy|ccc)',
            ],
          },
          { ...toward('temporal', 'temporal|temporally'), bound: true },
          { ...toward('nasal', 'nasal|nasally'), bound: true },
          { ...toward('superior', 'superior|superiorly|upwards|up'), bound: true },
          { ...toward('inferior', 'inferior|inferiorly|downwards|down'), bound: true },
        ],
      },
      {
        path: 'capsulotomy.outcome',
        about: ['capsulotomy'],
        values: [
          {
            value: 'complete',
            bound: true,
            said: [
              '[(was|is|and|intact and|fully|successfully)] (complete|completed)',
              'intact',
              'continuous and complete',
              'complete and (round|intact|continuous)',
              '(complete|completed) [uneventfully|successfully|without difficulty]',
              '[(went|goes|taken|carried|came|brought|ran)] (all|right|the whole) the way [(round|around)]',
              '[(went|goes|taken|carried|came|brought)] (all|right) (round|around)',
            ],
          },
          {
            value: 'complete',
            said: [
              '(complete|completed|intact) [continuous] [curvilinear] (capsulorhexis|rhexis|capsulotomy|ccc)',
              '(capsulorhexis|rhexis|capsulotomy|ccc) [$was] (complete|completed|intact|fully completed|completed successfully)',
            ],
          },
          {
            value: 'incomplete',
            bound: true,
            said: ['incomplete', 'not (complete|completed)', '(could not|couldnt) be completed', 'was not completed'],
          },
          {
            value: 'incomplete',
            said: [
              'incomplete (capsulorhexis|rhexis|capsulotomy|ccc)',
              '(capsulorhexis|rhexis|capsulotomy|ccc) [$was] incomplete',
            ],
          },
          {
            value: 'radial tear',
            said: [
              '(rhexis|capsulorhexis|ccc|capsulotomy) [$was] (tore|torn|ran|extended|went|escaped) [radially|out|out radially|outward|outwards|peripherally] [to the (periphery|equator)]',
              '(rhexis|capsulorhexis|ccc) (ran|run|tore|went) (out|radially|outwards|peripherally) [to the (periphery|equator)]',
              'radial (tear|extension|tear out) [of|in] [the] (rhexis|capsulorhexis|capsulotomy|ccc)',
              '(rhexis|capsulorhexis|ccc) [$was] [a|with a|had a] radial (tear|extension)',
              'radial tear',
              'radial extension',
            ],
          },
          { value: 'rescued', said: ['(rhexis|capsulorhexis|capsulotomy|tear) [$was] (rescued|retrieved|recovered)'] },
          { value: 'converted to can-opener', said: ['converted to [a] can+opener [capsulotomy]'] },
        ],
      },
    ],
  };
}
