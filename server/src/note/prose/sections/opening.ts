import type { Operation } from '@sideport/schemas';
import { and, capital, counted, join, longDate, where, withArticle } from '../english.ts';
import { Passage, type Tidy } from '../passage.ts';

type Incision = NonNullable<Operation['incisions']>['items'][number];
type Sutures = NonNullable<Incision['sutures']>;

/** From the anaesthetic to the freed nucleus. */
export function openingPassage(note: Operation, tidy: Tidy): Passage {
  const passage = new Passage();
  const said = note.$.said;
  passage.say(anaesthesia(note, tidy));
  if (note.anaesthesia?.$.said['anaesthetist']?.word === 'none') passage.say('No anaesthetist was present');
  passage.say(note.anaesthesia?.anaesthetist && `Anaesthetist: ${tidy(note.anaesthesia.anaesthetist)}`);
  passage.say(tidy(note.anaesthesia?.text));
  passage.say(antisepsis(note, tidy));
  passage.say(note.seat && `The surgeon sat ${note.seat.value}ly`);
  for (const group of alike(note.incisions?.items ?? [], tidy)) passage.say(incisionWords(group, tidy));
  passage.say(viscoelastics(note, tidy));
  if (said['ovd']?.word === 'none') passage.say('No viscoelastic was used');
  passage.say(note.dye && `The capsule was stained with ${note.dye.value}`);
  if (said['dye']?.word === 'none') passage.say('No dye was used');
  for (const aid of note['pupil-aid']?.items ?? []) {
    const count = aid.count ? ` (${tidy(aid.count)})` : '';
    passage.say(
      `Pupil aid: ${join([`${aid.kind?.value ?? 'not recorded'}${count}`, aid.reason && `because ${tidy(aid.reason)}`], ', ')}`,
    );
  }
  if (said['pupil-aid']?.word === 'none') passage.say('No pupil aid was needed');
  passage.say(capsulotomy(note, tidy));
  passage.say(tidy(note.capsulotomy?.text));
  if (said['capsulotomy']?.word === 'not done') passage.say('No capsulotomy was made');
  passage.say(hydrodissection(note));
  passage.need('anaesthesia', note.anaesthesia?.kinds);
  passage.need('antisepsis', note.antisepsis);
  passage.need("the surgeon's seat", note.seat);
  passage.need('incisions', note.incisions);
  passage.need('viscoelastic', note.ovd, said['ovd']?.word);
  passage.need('dye', note.dye, said['dye']?.word);
  passage.need('capsulotomy', note.capsulotomy, said['capsulotomy']?.word);
  passage.need('hydrodissection', note.hydrodissection, said['hydrodissection']?.word);
  return passage;
}

function anaesthesia({ anaesthesia: given }: Operation, tidy: Tidy): string | undefined {
  const kinds = given?.kinds?.items.map((kind) => kind.value) ?? [];
  if (!given || kinds.length === 0) return undefined;
  const sedated = kinds.includes('sedation');
  const blocks = kinds.filter((kind) => kind !== 'sedation');
  const words = join([
    and(blocks),
    blocks.length > 0 && 'anaesthesia',
    sedated && (blocks.length > 0 ? 'with sedation' : 'sedation'),
  ]);
  return join([
    words,
    given.drug && `with ${tidy(given.drug)}`,
    given.volume && `(${tidy(given.volume)})`,
    'was given',
    given['given-by'] && `by ${tidy(given['given-by'])}`,
  ]);
}

function antisepsis({ antisepsis: prepared }: Operation, tidy: Tidy): string | undefined {
  if (!prepared?.agent) return tidy(prepared?.text);
  const strength = prepared.strength ? ` ${tidy(prepared.strength)}` : '';
  const contact = prepared.contact ? ` for ${tidy(prepared.contact)}` : '';
  return join([`the eye was prepared with ${prepared.agent.value}${strength}${contact}`, tidy(prepared.text)], '; ');
}

/** Incisions that differ in nothing but their place are told together. */
function alike(incisions: readonly Incision[], tidy: Tidy): readonly (readonly [Incision, ...Incision[]])[] {
  const groups = new Map<string, [Incision, ...Incision[]]>();
  for (const [index, incision] of incisions.entries()) {
    const described = describedAs(incision, tidy);
    // A wound with sutures of its own is told by itself.
    const key = incision.sutures ? `${index}` : `${described}\n${tidy(incision.text) ?? ''}`;
    const group = groups.get(key);
    if (group) group.push(incision);
    else groups.set(key, [incision]);
  }
  return [...groups.values()];
}

function describedAs(incision: Incision, tidy: Tidy): string {
  const kind = incision.kind?.value;
  const name =
    kind === 'side-port'
      ? 'side-port'
      : kind === 'other'
        ? 'further incision'
        : kind === undefined
          ? 'incision'
          : `${kind} incision`;
  return join([
    tidy(incision.width),
    incision.architecture && planes(incision.architecture.value),
    incision.plane?.value,
    name,
  ]);
}

function incisionWords(group: readonly [Incision, ...Incision[]], tidy: Tidy): string {
  const [incision] = group;
  const described = describedAs(incision, tidy);
  const places = and(group.map(({ at }) => where(at)));
  const made = join([
    group.length === 1 ? `${withArticle(described)} was made` : `${counted(group.length, described)} were made`,
    places,
    incision.tunnel && `with a tunnel of ${tidy(incision.tunnel)}`,
  ]);
  const enlarged = incision['enlarged-to'] && `it was enlarged to ${tidy(incision['enlarged-to'])}`;
  return join([made, enlarged, suturesWords(incision.sutures), tidy(incision.text)], '; ');
}

const planes = (architecture: string): string => architecture.replace(/ planes?$/u, '-plane');

/** `two 10-0 nylon sutures were placed`; a wound without sutures is told with the closure. */
export function suturesWords(sutures: Sutures | undefined): string | undefined {
  if (!sutures) return undefined;
  const thing = join([sutures.gauge?.value, sutures.material?.value, 'suture']);
  const count = sutures.count?.value;
  const placed =
    count === undefined ? `${thing}s were placed` : `${counted(count, thing)} ${count === 1 ? 'was' : 'were'} placed`;
  return join([placed, sutures['remove-by'] && `to be removed by ${longDate(sutures['remove-by'].value)}`], ', ');
}

function viscoelastics({ ovd }: Operation, tidy: Tidy): string | undefined {
  const used = ovd?.items.map((one) =>
    join([one.kind?.value, one.agent?.value, tidy(one.strength), one.purpose && `(${tidy(one.purpose)})`]),
  );
  if (!used || used.length === 0) return undefined;
  return `Viscoelastic: ${and(used)}`;
}

function capsulotomy({ capsulotomy: made }: Operation, tidy: Tidy): string | undefined {
  if (!made) return undefined;
  const aids = join(
    [
      made.aimed && `aimed at ${tidy(made.aimed)}`,
      made['corneal-marker'] && `under a corneal mark of ${tidy(made['corneal-marker'])}`,
    ],
    ', ',
  );
  const first = join([
    withArticle(join([made.technique?.value, 'capsulotomy'])),
    made.diameter && `of ${tidy(made.diameter)}`,
    'was made',
    aids !== '' && `(${aids})`,
  ]);
  const offset = made['off-centre']?.value;
  const centred =
    offset === undefined
      ? undefined
      : offset.distance === 0
        ? 'it was centred on the optic'
        : `its centre lay ${offsetWords(tidy(made['off-centre']))} of the centre of the optic`;
  const outcome =
    made.outcome && (made.outcome.value === 'complete' ? 'it was complete' : `outcome: ${made.outcome.value}`);
  return join([first, and([outcome, centred])], '; ');
}

/** `0.3 mm toward 3 o'clock` becomes `0.3 mm to the 3 o'clock side`. */
export function offsetWords(text: string | undefined): string {
  const [, distance = '', place = ''] = /^(.*?)\s*toward (.+)$/u.exec(text ?? '') ?? [];
  return join([distance, `to the ${place} side`]);
}

function hydrodissection({ hydrodissection: done, $ }: Operation): string | undefined {
  if ($.said['hydrodissection']?.word === 'not done') return 'No hydrodissection was done';
  if (!done) return undefined;
  const cleaving = done.cortex && `cortical cleaving hydrodissection was ${done.cortex.value ? 'done' : 'not done'}`;
  const delineation = done.delineation && `hydrodelineation was ${done.delineation.value ? 'done' : 'not done'}`;
  const turned = done.rotation && `the nucleus ${done.rotation.value ? 'turned freely' : 'did not turn freely'}`;
  return capital(join([join([cleaving, delineation], ', '), turned], '; ')) || undefined;
}
