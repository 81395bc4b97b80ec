import type { SpokenSection } from './phrase.ts';

const wounds =
  '(wound|wounds|incision|incisions|side ports|side port|main wound|main incision|all wounds|all incisions|both wounds|wound edges|paracenteses|ports|corneal wounds|corneal wound|cornea|stroma|wounds and side ports|main wound and side ports|incisions and side ports)';
const stitch = '(suture|sutures|stitch|stitches)';
const time =
  '(see|seen|review|reviewed|reviews|follow+up|follow up|followup|return|returns|recheck|rechecked|appointment|clinic|back|check|checked|control|controlled|outpatients|outpatient|r / v|r v|rv|f / u|fu|f u|post op visit|postoperative visit|post operative visit|post op check|postoperative check|visit|come back|comes back)';
const whom =
  '[(her|him|them|the patient|patient|me|us|again|back|appointment|appointments|clinic|visit|in clinic|in outpatients|in the clinic|in eye clinic|in the eye clinic|with me|planned|arranged|booked|due|by me|and review|in review|for review|with the optometrist|in the outpatient clinic|check|scheduled|is|will be|in outpatient clinic|eye clinic)]';

/** Closure of the wounds, cover, drops and reviews. */
export function closureSpoken(): SpokenSection {
  return {
    subjects: [
      {
        id: 'closure',
        named: [`${wounds} (closed|checked|tested|inspected)`, '(limbal|corneal|scleral|wound|incision) closure'],
      },
      {
        id: 'sutures',
        named: [
          stitch,
          `${wounds} [$was] (closed|sutured|secured|closed up|stitched) [(with|using|by)]`,
          '(sutured|closed|stitched|secured) with',
          'sutured',
        ],
        heard: ['(stitcher|sue chair|soot your|suitor|suitors|such her|sue chers|suchers)'],
      },
      { id: 'dressing' },
      { id: 'review', named: [time] },
    ],
    fields: [
      {
        path: 'closure.hydration',
        about: ['closure'],
        values: [
          {
            value: 'yes',
            denied: 'no',
            said: [
              'wounds hydrated',
              `[the] ${wounds} [(edges|and side ports|and paracenteses|and side port|and paracentesis)] [$was] [(all|both|then|well|both then|stromally)] (hydrated|hydrosealed|hydro sealed|stromally hydrated)`,
              '[corneal|wound] stromal hydration [(of [the] (wounds|wound|incision|incisions|edges|side ports))]',
              '(corneal|wound|stroma|incision) hydration',
              'hydration of [the] (wound|wounds|incision|incisions|edges|stroma|side ports|corneal wounds|paracenteses)',
              'hydrated [all] [the] (wound|wounds|incision|incisions|edges|stroma|side ports|corneal wounds)',
              'hydrated',
              'hydration',
            ],
            heard: [
              '(wounds|wound|winds|ones|rooms) (high|hi|hide|hide a) (dray|dre|drey|rated|dry|treated|dray ted|drated) [ted|did]',
              '(strom all|stroma|strong all|storm all|strome al|strome ill) (hydration|high dration|high ration)',
              'wounds (hide rated|high rated|hydra ted|high treated)',
            ],
          },
        ],
      },
      {
        path: 'closure.leak-test',
        about: ['closure'],
        values: [
          {
            value: 'no leak',
            said: [
              '(seidel|seidels|siedel|siedels|seidal) [(test|testing|sign|tests)] [$was] [(all|both)] (negative|neg)',
              'negative (seidel|seidels|siedel|seidel test|leak test)',
              '$no [any] [(wound|fluid|aqueous|further)] (leak|leaks|leakage|leaking) [(seen|detected|noted|at the end|from the wound|from the wounds|from any wound|at all|on testing|demonstrated|from wounds|from any of the wounds|was seen|was detected)]',
              `[${wounds}] [(and|$was)] [(all|found to be|checked and|confirmed|tested and|found|now|both|noted to be|confirmed to be|checked and found to be)] (watertight|water tight|leak free|not leaking|airtight)`,
              `[${wounds}] [(and|it|they|which|that)] (do not|does not|did not|dont|doesnt|didnt|failed to|no longer) [now] (leak|leaks|leaked) [now]`,
              '[and] none [of (them|these|the wounds|the incisions|which)] [$was] (leaking|leaked|leaks|leak)',
              'leak test [$was] negative',
              'nothing (leaking|leaked|leaks)',
              '(not|never) a drop (leaking|leaked|leaks|came out)',
              '(watertight|water tight) (wound|wounds|closure|incision|incisions)',
              'leak (none|nil|absent)',
            ],
            heard: [
              '(sidel|side all|sigh dell|cidel|sidle|site all|side el|saddle|sidell|sigh del|seidle|seidl) [test] negative',
              '(what a tight|water type|waters tight|water tied)',
            ],
          },
          {
            value: 'no leak',
            implied: true,
            said: [
              `${wounds} [$was] [(all|found to be|checked and|both|secure and)] (secure|dry|sealed|tight|leakproof) [on testing]`,
              'dry on testing',
            ],
          },
          {
            value: 'leak',
            denied: 'no leak',
            said: [
              '(seidel|seidels|siedel|seidal) [(test|testing)] [$was] positive',
              'positive (seidel|seidels|seidel test|leak test)',
              'leak test [$was] positive',
              `${wounds} [$was] [(still|slightly|initially|a little)] (leaking|leaked|leaky|leaks)`,
              '(wound|incision) leak',
              'leak (from|at) the (wound|main wound|incision|main incision|side port)',
              'leaking (wound|incision|side port)',
              'leaky (wound|incision)',
            ],
            heard: ['(sidel|side all|sigh dell|cidel|sidle|site all|side el) positive'],
          },
        ],
      },
      {
        path: 'closure.pressure',
        about: ['closure'],
        called: ['pressure at the end', '(final|end) (pressure|iop|intraocular pressure) [(of|was|is)]'],
        amounts: [{ unit: 'mmHg', bare: 'named', namedOnly: true, possible: [0, 90] }],
      },
      {
        path: 'closure.pressure-by-touch',
        about: ['closure'],
        values: [
          {
            value: 'normal',
            said: [
              'eye normal to touch',
              '(eye|globe|pressure) [$was] (physiological|normal) [(to (touch|palpation)|at the end|digitally)]',
              '(physiological|normal) (pressure|iop) at the end',
            ],
          },
          {
            value: 'soft',
            said: ['eye soft to touch', '(eye|globe) [$was] (soft|low) [to (touch|palpation)] [at the end]'],
          },
          {
            value: 'firm',
            said: ['eye firm to touch', '(eye|globe) [$was] (firm|hard) [to (touch|palpation)] [at the end]'],
          },
        ],
      },
      {
        path: 'closure.sutures.count',
        about: ['sutures'],
        amounts: [{ unit: '', bare: 'subject', possible: [0, 20], whole: true }],
        forms: [
          {
            said: [
              `{count} [(interrupted|simple|single|radial|cross|corneal|buried|further|figure of eight|x)] ${stitch}`,
              `${stitch} (x|times|by) {number}`,
            ],
          },
          {
            said: [`{count} [(interrupted|simple|single|corneal)] absorbable [(interrupted|corneal)] ${stitch}`],
            also: [['closure.sutures.material', 'polyglactin']],
          },
          { said: ['x {number}', '(times|by) {number}'], bound: true },
        ],
        values: [
          {
            value: '0',
            as: ['closure.sutures', 'none'],
            said: [
              `(no|without|nil|zero|not any) [(any|corneal|wound|further)] (${stitch}|suturing) [($was|to the wound)] [(needed|required|necessary|placed|used|inserted)]`,
              `(sutureless|suture+less|unsutured|un sutured|not sutured|suture free|stitchless|not stitched) [(closure|wound|wounds|incision)]`,
              `${stitch} [,] [$was] (none|nil|not needed|not required|unnecessary|not necessary|not used|not placed)`,
              `left (unsutured|un sutured|without ${stitch})`,
              `[the] ${stitch} [$was] (omitted|left out|dispensed with)`,
              '(wound|wounds|incision) $not sutured',
              `did not (need|require) [(any|a)] ${stitch}`,
              '(do not|did not|dont|didnt) (suture|stitch)',
              `no need for [(any|a)] ${stitch}`,
              `(did not|didnt) (put|place|use|insert|add) [in] [(a|any)] ${stitch} [in]`,
            ],
          },
          { value: '1', bound: true, said: ['[a] single [interrupted]'] },
        ],
      },
      {
        path: 'closure.sutures.gauge',
        about: ['sutures'],
        forms: [{ said: ['{gauge}'] }],
      },
      {
        path: 'closure.sutures.material',
        about: ['sutures'],
        values: [
          {
            value: 'nylon',
            said: ['[monofilament] nylon'],
            heard: ['(nile on|nigh lon|nile an|ny lawn|nigh on|nylons|my long|nine long)'],
          },
          {
            value: 'polyglactin',
            said: ['vicryl', 'polyglactin', '[synthetic] absorbable', 'absorbable'],
            heard: [
              '(vie krill|vicro|vy crill|vicral|vikryl|vic ril|the krill|bicryl|vicarel)',
              '(poly glacton|poly lactin|polly glactin|poly glactin)',
            ],
          },
          { value: 'polypropylene', said: ['polypropylene'] },
        ],
      },
      {
        path: 'after-care.shield',
        about: ['dressing'],
        values: [
          {
            value: 'yes',
            denied: 'no',
            said: [
              '[a|the] [(clear|plastic|eye|protective|clear plastic|transparent|clear eye|perforated|rigid)] shield [(on|over|applied|placed|taped|in place|to the eye|over the eye|applied over the eye|over eye)]',
              'shielded',
            ],
            heard: ['(sheild|shielded on|shields on|she old on|sealed on|field on)'],
          },
        ],
      },
      {
        path: 'after-care.pad',
        about: ['dressing'],
        values: [
          {
            value: 'yes',
            denied: 'no',
            said: [
              '[a|the] [(eye|gauze|double|cotton|pressure)] (pad|padded|patch|patched|padding) [(on|over|applied|placed|in place|to the eye|over the eye|and bandage)]',
              'eyepad',
            ],
            heard: ['(pat|pads|bad|pod) on', 'pad did'],
          },
        ],
      },
      {
        path: 'reviews[next].due',
        about: ['review'],
        several: true,
        called: [`${time} ${whom} [(in|after|at|on|for|within)]`],
        forms: [
          {
            said: [
              `${time} ${whom} [(in|after|at|on|for|within|at about|in about)] {duration}`,
              '{duration} [post operative|postoperative|post op] (review|follow up|follow+up|appointment|check|visit|clinic)',
              'discharged to [clinic|review|outpatients] (in|at) {duration}',
              `(in|after) {duration} for [a] (review|check|follow up)`,
            ],
          },
          { said: ['[(in|after|at)] {duration}'], bound: true },
          {
            said: [
              `${time} ${whom} [on] [postoperative|post operative|post op|postop] day {number}`,
              'day {number} (review|check|visit|follow up|post op|postoperative|appointment)',
              '[on] [postoperative|post operative] day {number} (post op|postoperatively|post operatively|after surgery)',
            ],
            write: '{} day',
          },
        ],
        values: [
          {
            value: '1 day',
            said: [
              `${time} ${whom} [(on|in)] (tomorrow|the next day|next day|the following day|the morning|next morning|the next morning|the following morning|the first day|tomorrow morning|first postoperative day|the first postoperative day|the first post operative day|tomorrow in clinic|the day after|the day after surgery)`,
              '[the] (tomorrow|next day|day one|first day|first postoperative day) (review|check|follow up|visit|appointment|clinic|post op check)',
              '(tomorrow|next day) for [a] (review|check|follow up|visit)',
            ],
          },
          {
            value: '1 week',
            said: [`${time} ${whom} [in|at|the] (next week|following week|a weeks time|one weeks time)`],
          },
          {
            value: '2 weeks',
            said: [`${time} ${whom} [in|at] (two weeks time|a fortnights time)`],
          },
          { value: '1 day', bound: true, said: ['tomorrow', '[the] next day', '[the] following day'] },
        ],
      },
    ],
  };
}
