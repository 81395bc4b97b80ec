import type { Operation } from '@sideport/schemas';
import { whyNoExtraction } from '../../computing/natural-lens.ts';
import { and, capital, counted, join, where, withArticle } from '../english.ts';
import { Passage, type Tidy } from '../passage.ts';
import { capsulotomyWords } from './capsulotomy.ts';
import { suturesWords } from './closure.ts';

type Incision = NonNullable<Operation['incisions']>['items'][number];
type PupilAid = NonNullable<Operation['pupil-aid']>['items'][number];

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
  passage.say(note.dye && `The capsule was stained with ${tidy(note.dye)}`);
  if (said['dye']?.word === 'none') passage.say('No dye was used');
  for (const aid of note['pupil-aid']?.items ?? []) passage.say(pupilAidWords(aid, tidy));
  if (said['pupil-aid']?.word === 'none') passage.say('No pupil aid was used');
  passage.say(capsulotomyWords(note, tidy));
  passage.say(tidy(note.capsulotomy?.text));
  if (said['capsulotomy']?.word === 'not done') passage.say('No capsulotomy was made');
  passage.say(hydrodissection(note));
  passage.need('anaesthesia', note.anaesthesia?.kinds);
  passage.need('antisepsis', note.antisepsis);
  passage.need("the surgeon's seat", note.seat);
  passage.need('incisions', note.incisions);
  passage.need('viscoelastic', note.ovd, said['ovd']?.word);
  passage.need('dye', note.dye, said['dye']?.word);
  if (whyNoExtraction(note) === undefined) {
    passage.need('capsulotomy', note.capsulotomy, said['capsulotomy']?.word);
    passage.need('hydrodissection', note.hydrodissection, said['hydrodissection']?.word);
  }
  return passage;
}

function anaesthesia({ anaesthesia: given }: Operation, tidy: Tidy): string | undefined {
  const kinds = given?.kinds?.items.map((kind) => kind.value) ?? [];
  if (!given || (kinds.length === 0 && !given.drug && !given.volume && !given['given-by'])) return undefined;
  const blocks = kinds.filter((kind) => kind !== 'sedation');
  const parts = [blocks.length > 0 && `${and(blocks)} anaesthesia`, blocks.length < kinds.length && 'sedation'];
  const words = parts.filter((part) => part !== false);
  return join([
    and(words) || 'anaesthesia',
    given.drug && `with ${tidy(given.drug)}`,
    given.volume && `(${tidy(given.volume)})`,
    words.length > 1 ? 'were given' : 'was given',
    given['given-by'] && `by ${tidy(given['given-by'])}`,
  ]);
}

function antisepsis({ antisepsis: prepared }: Operation, tidy: Tidy): string | undefined {
  if (!prepared?.agent) return tidy(prepared?.text);
  const strength = prepared.strength ? ` ${tidy(prepared.strength)}` : '';
  const contact = prepared.contact ? ` for ${tidy(prepared.contact)}` : '';
  return join([`the eye was prepared with ${tidy(prepared.agent)}${strength}${contact}`, tidy(prepared.text)], '; ');
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

function viscoelastics({ ovd }: Operation, tidy: Tidy): string | undefined {
  const used = ovd?.items.map((one) =>
    join([one.kind?.value, tidy(one.agent), tidy(one.strength), one.purpose && `(${tidy(one.purpose)})`]),
  );
  if (!used || used.length === 0) return undefined;
  return `Viscoelastic: ${and(used)}`;
}

const COUNTED: Readonly<Record<string, string>> = { 'iris hooks': 'iris hook', 'expansion ring': 'expansion ring' };

/** `Pupil aid: five iris hooks; reason: pupil 4 mm`. */
function pupilAidWords({ kind, count, reason }: PupilAid, tidy: Tidy): string {
  const one = COUNTED[kind?.value ?? ''];
  const aid =
    one !== undefined && count
      ? counted(count.value, one)
      : join([kind?.value ?? 'not named', count && `(${tidy(count)})`]);
  return join([`Pupil aid: ${aid}`, reason && `reason: ${tidy(reason)}`], '; ');
}

function hydrodissection({ hydrodissection: done, $ }: Operation): string | undefined {
  if ($.said['hydrodissection']?.word === 'not done') return 'No hydrodissection was done';
  if (!done) return undefined;
  const cleaving = done.cortex && `cortical cleaving hydrodissection was ${done.cortex.value ? 'done' : 'not done'}`;
  const delineation = done.delineation && `hydrodelineation was ${done.delineation.value ? 'done' : 'not done'}`;
  const turned = done.rotation && `the nucleus ${done.rotation.value ? 'turned freely' : 'did not turn freely'}`;
  return capital(join([join([cleaving, delineation], ', '), turned], '; ')) || undefined;
}
