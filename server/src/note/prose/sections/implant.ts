import type { Operation } from '@sideport/schemas';
import { and, join, longDate, offsetWords, where, withArticle } from '../english.ts';
import { Passage, type Tidy } from '../passage.ts';
import { placePhrase } from '../places.ts';
import { explantedSentences, extraSentences } from './beside.ts';
import { closureSentences } from './closure.ts';
import { ringWords } from './ring.ts';

type Lens = NonNullable<Operation['lens']>;

/** The lens taken out, ring, lens, what else was done, drugs at the end, and the closure of the wounds. */
export function implantPassage(note: Operation, tidy: Tidy): Passage {
  const passage = new Passage();
  const { lens, closure } = note;
  explantedSentences(note, tidy, passage);
  passage.say(ringWords(note, tidy));
  if (lens) lensSentences(lens, tidy, passage);
  extraSentences(note, tidy, passage);
  const drugs =
    note.drugs?.items.map((one) =>
      join([
        tidy(one.drug) ?? unnamedDrug(one.purpose?.value),
        tidy(one.dose),
        'was given',
        one.route && routeWords(one.route.value),
      ]),
    ) ?? [];
  for (const drug of drugs) passage.say(drug);
  if (note.$.said['drugs']?.word === 'none') passage.say('No drugs were given at the end');
  passage.say(
    note['antibiotic-withheld'] && `No antibiotic was given at the end: ${tidy(note['antibiotic-withheld'])}`,
  );
  if (closure) closureSentences(note, tidy, passage);
  passage.need('whether a tension ring was used', note.ring?.used);
  if (note.procedure?.value === 'lens exchange') passage.need('the lens taken out', note['explanted-lens']);
  passage.need('the lens, or that none was implanted', lens?.placed, lens?.power);
  if (lens && lens.placed?.value !== 'none') {
    passage.need('power of the lens', lens.power);
    passage.need('serial or lot number of the lens', lens.serial, lens.lot, lens.udi);
    passage.need('placement of the lens', lens.placed);
  }
  passage.need('drugs given', note.drugs, note['antibiotic-withheld'], note.$.said['drugs']?.word);
  passage.need('closure', closure);
  return passage;
}

function lensSentences(lens: Lens, tidy: Tidy, passage: Passage): void {
  if (lens.placed?.value === 'none') {
    passage.say('No lens was implanted: the eye was left aphakic');
  } else {
    const numbers = [
      lens.serial && `serial number ${tidy(lens.serial)}`,
      lens.lot && `lot ${tidy(lens.lot)}`,
      lens.expiry && `expiry ${longDate(lens.expiry.value)}`,
    ].filter((part) => part !== undefined);
    const kind = join([
      lens.pieces && `${lens.pieces.value === 1 ? 'one' : lens.pieces.value === 3 ? 'three' : lens.pieces.value}-piece`,
      lens.material?.value,
    ]);
    const optic = lens['optic-diameter'] && `optic ${tidy(lens['optic-diameter'])}`;
    const details = join([kind, optic, ...numbers], ', ');
    passage.say(
      join([
        withArticle(lensName(lens, tidy)),
        details !== '' && `(${details})`,
        'was implanted',
        placePhrase(lens.placed),
        lens['injected-through'] && `through a wound of ${tidy(lens['injected-through'])}`,
      ]),
    );
    passage.say(position(lens, tidy));
  }
  passage.say(lens['changed-because'] && `Another lens than planned was chosen: ${tidy(lens['changed-because'])}`);
  if (lens['ovd-removed-behind'])
    passage.say(
      lens['ovd-removed-behind'].value
        ? 'The viscoelastic behind the lens was removed'
        : 'The viscoelastic behind the lens was not removed',
    );
  passage.say(lens.udi && `Scanned identifier: ${tidy(lens.udi)}`);
  if (lens['card-given'])
    passage.say(
      lens['card-given'].value ? 'The implant card was given to the patient' : 'The implant card was not given',
    );
  passage.say(tidy(lens.text));
}

/** `Halden Optics HX-1 monofocal lens of +5.5 D`; the axis of a toric lens is told with its cylinder. */
function lensName(lens: Lens, tidy: Tidy): string {
  const toric = [
    lens.cylinder && `with a cylinder of ${tidy(lens.cylinder)}`,
    lens.axis && `${lens.cylinder ? '' : 'with '}its marks at ${tidy(lens.axis)}`,
  ];
  return join([
    join([tidy(lens.maker), tidy(lens.model), lens.kind?.value, 'lens']),
    lens.power && `of ${tidy(lens.power)}`,
    join(toric, ', '),
  ]);
}

function position(lens: Lens, tidy: Tidy): string | undefined {
  const haptics = lens['haptics-at'] && `its haptics lay ${hapticsWords(lens['haptics-at'])}`;
  const offset = lens['off-centre']?.value;
  const centred =
    offset === undefined
      ? undefined
      : offset.distance === 0
        ? 'it was centred'
        : `its optic lay ${offsetWords(tidy(lens['off-centre']))} of the centre of the pupil`;
  return and([haptics, centred]) || undefined;
}

/** Where the haptics lie; of a pair both places are told as they were typed: “3 and 9 o'clock”. */
function hapticsWords(at: NonNullable<NonNullable<Operation['lens']>['haptics-at']>): string {
  return /\band\b|-|–/u.test(at.text) ? `at ${at.text.trim()}` : (where(at) ?? at.text);
}

/** What a drug that is not named was given for. */
function unnamedDrug(purpose: string | undefined): string {
  if (purpose === undefined || purpose === 'other') return 'a drug that is not named';
  return purpose === 'pressure lowering' ? 'a pressure-lowering drug' : withArticle(purpose);
}

function routeWords(route: string): string {
  const adverbs: Readonly<Record<string, string>> = {
    intracameral: 'into the anterior chamber',
    subconjunctival: 'under the conjunctiva',
    'sub-Tenon': "under Tenon's capsule",
    intravitreal: 'into the vitreous',
    topical: 'as drops',
    oral: 'by mouth',
    intravenous: 'intravenously',
  };
  return adverbs[route] ?? route;
}
