import type { NoteView } from './note-view.ts';

/** What tells an entry of a list from the others, by the name it has in the phrase table. */
export function identityOf(list: string, entry: string): Readonly<Record<string, string>> | undefined {
  switch (list) {
    case 'team':
      return { role: entry };
    case 'incisions':
      return { kind: entry };
    case 'ovd':
      return viscoelastics[entry] ?? { kind: entry };
    case 'pupil-aid':
      return { kind: entry === 'phenylephrine' ? 'intracameral phenylephrine' : entry };
    case 'nucleus.steps':
      return entry === 'settings' ? undefined : { step: entry };
    case 'complications':
      return { what: entry };
    case 'after-care.drops':
      return ['steroid', 'antibiotic', 'non-steroidal'].includes(entry) ? { kind: entry } : { drug: entry };
    case 'drugs':
      return drugIdentity(entry);
    default:
      return undefined;
  }
}

const viscoelastics: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  methylcellulose: { agent: 'hydroxypropyl methylcellulose' },
  hyaluronate: { agent: 'sodium hyaluronate' },
};

/** "intracameral cefuroxime": a drug by its route. */
function drugIdentity(entry: string): Readonly<Record<string, string>> {
  const [route = '', ...drug] = entry.split(' ');
  return drug.length === 0 ? { purpose: entry } : { route, drug: drug.join(' ') };
}

/** The position of a named entry in the note, or undefined when the note has none like it. */
export function entryInNote(view: NoteView, list: string, entry: string): number | undefined {
  const path = list.split('.');
  if (list === 'nucleus.steps' && entry === 'settings') return stepInNote(view, path);
  const identity = identityOf(list, entry);
  return identity === undefined ? undefined : view.entryLike(path, identity);
}

/** Settings said without a step are those of the only step, of the step that stands for all, or of one without a name. */
function stepInNote(view: NoteView, path: readonly string[]): number | undefined {
  if (view.entries(path).length === 1) return 0;
  return view.entryLike(path, { step: 'whole nucleus' }) ?? view.entryWithout(path, 'step');
}
