import type { SpokenSection } from './phrase.ts';

const agents =
  '(lidocaine|amethocaine|tetracaine|proxymetacaine|proparacaine|oxybuprocaine|bupivacaine|levobupivacaine|ropivacaine|articaine|mepivacaine)';
const anaesthesia = '(anaesthesia|anaesthetic|block|injection)';

/** Anaesthesia, antisepsis, seat. */
export function anaesthesiaSpoken(): SpokenSection {
  return {
    subjects: [
      { id: 'anaesthesia', named: ['(anaesthesia|anaesthetic|block)', 'local (anaesthesia|anaesthetic)', 'la', 'l a'] },
      { id: 'antisepsis', named: ['(prep|prepped|prepared|antisepsis|skin prep|preparation|disinfection)'] },
      { id: 'seat' },
    ],
    fields: [
      {
        path: 'anaesthesia.kinds',
        about: ['anaesthesia'],
        several: true,
        values: [
          {
            value: 'topical',
            said: [
              `topical ${anaesthesia}`,
              'topical',
              'topical (anaesthetic|anaesthesia) (drops|gel)',
              `${agents} (drops|gel)`,
              'anaesthetic drops [(only|alone)]',
              'drops (only|alone) for (anaesthesia|the anaesthetic)',
              '(under|with|using|by|just) [eye] drops (only|alone)',
              'drops (only|alone) [,] no block',
              '(anaesthesia|anaesthetic) with drops [(only|alone)]',
              'drop anaesthesia',
            ],
          },
          // Drops after the operation are topical too.
          { value: 'topical', implied: true, said: ['topical drops'] },
          {
            value: 'intracameral',
            said: [
              `intra+cameral ${anaesthesia}`,
              `intra+cameral ${agents}`,
              `[preservative free] ${agents} [$was] [(injected|given|instilled|put|placed)] (intra+cameral|intra+camerally|into the [anterior] chamber)`,
              '(intra+cameral|ic|i c) (la|l a|local)',
            ],
          },
          { value: 'intracameral', bound: true, said: ['intra+cameral', 'intra+camerally', 'ic', 'i c'] },
          {
            value: 'sub-Tenon',
            said: [
              'sub tenon block',
              'sub+tenons',
              'sub+tenon',
              `(sub+tenons|sub+tenon) ${anaesthesia}`,
              'sub tenons capsule block',
            ],
            heard: [
              'sub tenants',
              'sub tennis',
              'sub tennants',
              'subtenants',
              'sub tenant',
              'sub ten ons',
              'sub tenence',
              'sub tenets',
              'sub turnons',
              'some tenons',
              'sub tenens',
              'sub tendons',
              'sub tinnens',
            ].flatMap((heard) => [heard, `${heard} (block|anaesthesia|anaesthetic)`]),
          },
          {
            value: 'peribulbar',
            said: ['peri+bulbar', `peri+bulbar ${anaesthesia}`],
            heard: [
              '(perry|peri|pair a|pera|perry a|parry|para) (bulbar|bulba|bull bar|bull ba|bulber) [block]',
              '(perry|parry|para)bulbar [block]',
              'perry bull bar [block]',
            ],
          },
          {
            value: 'retrobulbar',
            said: ['retro+bulbar', `retro+bulbar ${anaesthesia}`],
            heard: ['retro (bulba|bull bar|bull ba|bulber) [block]'],
          },
          {
            value: 'general',
            said: [
              'general anaesthesia',
              'general (anaesthesia|anaesthetic)',
              'ga',
              'g a',
              '(under|having) [a] general',
              'general endotracheal anaesthesia',
            ],
          },
          { value: 'general', bound: true, said: ['general'] },
          {
            value: 'sedation',
            said: [
              '[(intravenous|iv|i v|light|conscious|monitored|oral|mild|some)] sedation',
              '(sedated|sedation) with midazolam',
              'midazolam',
              'monitored anaesthesia care',
              '[lightly] sedated',
            ],
          },
        ],
      },
      {
        path: 'anaesthesia.drug',
        about: ['anaesthesia'],
        values: [
          'lidocaine',
          'tetracaine',
          'proxymetacaine',
          'proparacaine',
          'oxybuprocaine',
          'bupivacaine',
          'levobupivacaine',
          'ropivacaine',
          'articaine',
          'mepivacaine',
        ].map((drug) => ({
          value: drug,
          said: [drug, `(with|of) ${drug}`],
        })),
      },
      {
        path: 'anaesthesia.volume',
        about: ['anaesthesia'],
        amounts: [{ unit: 'mL', bare: 'never', possible: [0.2, 15], usual: [1, 8] }],
      },
      {
        path: 'antisepsis.agent',
        about: ['antisepsis'],
        values: [
          {
            value: 'povidone-iodine',
            said: [
              '(povidone|povidine|povodone) [-] iodine',
              'iodine',
              'povidone',
              '(pvp|pvp i|pvi|pvpi|p v p i|p v i) [iodine]',
              'aqueous iodine',
              'iodine (prep|wash|drops|solution|paint)',
            ],
            heard: [
              'pov a done iodine',
              'pover dome iodine',
              'povi done iodine',
              'poverty own iodine',
              'pov i done iodine',
              'pavid own iodine',
              'pov iodine',
            ],
          },
          { value: 'chlorhexidine', said: ['[aqueous] chlorhexidine', 'aqueous chlorhexidine'] },
        ],
      },
      {
        path: 'antisepsis.strength',
        about: ['antisepsis'],
        called: ['(povidone|povidine) [-] iodine [(at|of)]', 'iodine'],
        amounts: [{ unit: '%', bare: 'never', possible: [0.05, 20] }],
        forms: [
          {
            said: [
              '{number} (percent|per cent) [(aqueous|ophthalmic)] ((povidone|povidine) [-] iodine|iodine|povidone|chlorhexidine)',
            ],
            write: '{} %',
            also: [['antisepsis.agent', 'povidone-iodine']],
          },
        ],
      },
      {
        path: 'antisepsis.contact',
        about: ['antisepsis'],
        amounts: [{ unit: 'min', bare: 'never', possible: [0.5, 30] }],
        forms: [
          {
            said: ['(for|left for) {number} (minutes|minute)', '{number} (minutes|minute) contact [time]'],
            bound: true,
            write: '{} min',
          },
        ],
      },
      {
        path: 'seat',
        about: ['seat'],
        forms: [
          {
            said: [
              '(sat|seated|sitting|i sat|surgeon sat|surgeon seated|surgeon sitting|sat at the|seated at the|stood) {place}',
              'seat {place}',
              'surgeon {place}',
            ],
          },
        ],
        values: [{ value: 'superior', said: ['(sat|seated|sitting|stood) at the head [end] [of the table]'] }],
      },
    ],
  };
}
