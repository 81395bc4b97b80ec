import { describe, expect, it } from 'vitest';
import type { Path } from '@sideport/schemas';
import { actionsAt } from '../../server/src/note/editing/actions/all-actions.ts';
import { renameIn } from '../../server/src/note/editing/rename.ts';
import { spotOf } from '../../server/src/note/editing/spots.ts';
import type { Addition } from '../../server/src/note/edits/additions.ts';
import { insertValues } from '../../server/src/note/edits/insert-values.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import type { Surroundings } from '../../server/src/note/review.ts';
import { commentsIn, laidOut, saidIn, styles } from './layouts.ts';
import { apply } from './mark.ts';

const list = readNote(
  'sideport: 1\nlenses:\n  - maker: Halden Optics\n    model: HX-1\n    device-identifier: "09521234543213"\n',
  'department',
);
const surroundings: Surroundings = { department: list.kind === 'department' ? list.note : null };

const note = `opnote: 1
record: operation
status: draft
id: OP-1
date: 2031-03-14
patient:
  ref: P-7
eye: left
dye:
team:
  - role: surgeon
    ref: S-02
  - role: scrub nurse
    ref: N-14
seat: superior
preop:
  pupil: 7.5
incisions:
  - kind: main
    at: 11 o'clock
    width: 2.4 mm
  - kind: side-port
    at: 3 o'clock
capsule-state:
  anterior: intact
  posterior: torn
lens:
  power: +5.5 D
  udi: (01)09521234543213(17)340600(10)L2031A(21)0040719052
  placed: sulcus
complications:
  - what: wound leak
    action: suture
findings: soft nucleus
signed:
  - by: S-02
`;

interface Case {
  readonly at: Path;
  readonly title: RegExp;
  /** Values that are no longer there afterwards, and those that are new. */
  readonly gone?: readonly string[];
  readonly added: readonly string[];
  /** The note, where it is another one. */
  readonly text?: string;
  /** In these styles there is no place for it. */
  readonly nowhereIn?: RegExp;
}

const account = (at: number) => [
  `complications[${at}].what=posterior capsule rupture`,
  ...['when', 'action', 'account'].map((key) => `complications[${at}].${key}=`),
];

const cases: Readonly<Record<string, Case>> = {
  'an empty field said to be none': {
    at: ['dye'],
    title: /Record as “none”/u,
    gone: ['dye='],
    added: ['dye=none'],
    nowhereIn: /^all in braces$/u,
  },
  'a unit': {
    at: ['preop', 'pupil'],
    title: /Write the unit/u,
    gone: ['preop.pupil=7.5'],
    added: ['preop.pupil=7.5 mm'],
    nowhereIn: /^blocks|in quotes$/u,
  },
  'a clock hour in degrees': {
    at: ['incisions', 0, 'at'],
    title: /clock hour as 120°/u,
    gone: ["incisions[0].at=11 o'clock"],
    added: ['incisions[0].at=120°'],
  },
  'the fields of a label': {
    at: ['lens', 'udi'],
    title: /^Fill maker, model, serial, lot, expiry/u,
    added: ['maker=Halden Optics', 'model=HX-1', 'serial=0040719052', 'lot=L2031A', 'expiry=2034-06'].map(
      (field) => `lens.${field}`,
    ),
    nowhereIn: /^all in braces$/u,
  },
  'the fields of a label, one of them begun': {
    at: ['lens', 'udi'],
    title: /^Fill maker, model, serial, lot, expiry/u,
    text: note.replace('lens:\n', 'lens:\n  maker:\n'),
    gone: ['lens.maker='],
    added: ['maker=Halden Optics', 'model=HX-1', 'serial=0040719052', 'lot=L2031A', 'expiry=2034-06'].map(
      (field) => `lens.${field}`,
    ),
    nowhereIn: /^(?:sections in braces|all in braces)/u,
  },
  'the account of a complication': {
    at: ['complications', 0, 'what'],
    title: /^Record the complication's account/u,
    added: ['complications[0].account='],
  },
  'a complication more': {
    at: ['capsule-state', 'posterior'],
    title: /account of the posterior capsule rupture/u,
    added: account(1),
    nowhereIn: /^(?:sections in braces|all in braces)/u,
  },
  'a first complication': {
    at: ['capsule-state', 'posterior'],
    title: /account of the posterior capsule rupture/u,
    text: note.replace(/complications:\n(?: .*\n)+/u, ''),
    added: account(0),
    nowhereIn: /^all in braces$/u,
  },
  'a complication in an empty field': {
    at: ['capsule-state', 'posterior'],
    title: /account of the posterior capsule rupture/u,
    text: note.replace(/complications:\n(?: .*\n)+/u, 'complications:\n'),
    gone: ['complications='],
    added: account(0),
    nowhereIn: /^all in braces$/u,
  },
  'a complication where there was none': {
    at: ['capsule-state', 'posterior'],
    title: /account of the posterior capsule rupture/u,
    text: note.replace(/complications:\n(?: .*\n)+/u, 'complications: none\n'),
    gone: ['complications=none'],
    added: account(0),
    nowhereIn: /^(?:all in braces$|blocks|values below)/u,
  },
};

function offsetOf(text: string, path: Path): number {
  const reading = readNote(text);
  const { key, node } = spotOf(reading.tree, reading.kind, path);
  return key?.start ?? node?.span.start ?? -1;
}

/** The comments without the marks that were put before them, and without those alone. */
function toldIn(text: string): readonly string[] {
  return commentsIn(text)
    .map((comment) => comment.replace(/^proposed from the (?:label|dictation: “[^”]*”(?:, “[^”]*”)*)(?:; )?/u, ''))
    .filter((comment) => !comment.startsWith(' |'));
}

describe.each(Object.entries(styles))('in a note laid out with %s', (name, style) => {
  it.each(Object.entries(cases))('%s', (_, { at, title, gone = [], added, text = note, nowhereIn }) => {
    const before = laidOut(readNote(text).tree.root!, style);
    const around = { reading: readNote(before), surroundings };
    const action = actionsAt(around, offsetOf(before, at)).find((each) => title.test(each.title));
    if (nowhereIn?.test(name) === true) {
      expect(action).toBeUndefined();
      return;
    }
    const after = apply(before, action?.edits ?? []);
    const expected = [...saidIn(before).values.filter((value) => !gone.includes(value)), ...added];
    expect(saidIn(after).faults).toEqual([]);
    expect(saidIn(after).values.toSorted()).toEqual(expected.toSorted());
    expect(toldIn(after)).toEqual(expect.arrayContaining([...toldIn(before)]));
  });

  const proposed = (path: Path, value: string): Addition => ({
    path,
    value,
    as: 'value',
    words: `${value}, so it was said`,
    proposedFrom: 'dictation',
  });
  const additions = [
    proposed(['lens', 'model'], 'HX-1'),
    proposed(['lens', 'pieces'], '1'),
    proposed(['dye'], 'trypan blue'),
    proposed(['complications-excluded', 0], 'iris prolapse'),
  ];

  it.each(additions.map((addition) => [addition.path.join('.'), addition] as const))(
    'the proposal of %s, declined, leaves the note as it was; confirmed, it leaves its value',
    (_, addition) => {
      const before = laidOut(readNote(note).tree.root!, style);
      const edits = insertValues(readNote(before), [addition]);
      if (edits.length === 0) {
        expect(name).toBe('all in braces');
        return;
      }
      const text = apply(before, edits);
      const act = (title: RegExp) => {
        const around = { reading: readNote(text), surroundings };
        const found = actionsAt(around, offsetOf(text, addition.path)).find((each) => title.test(each.title));
        return found === undefined ? text : apply(text, found.edits);
      };
      const [declined, confirmed] = [act(/^Decline this/u), act(/^Confirm this/u)];
      // A field that stood there empty goes with its proposal, unless its comment says more.
      const without = (values: readonly string[]) => values.filter((value) => value !== 'dye=');
      expect(without(saidIn(declined).values).toSorted()).toEqual(without(saidIn(before).values).toSorted());
      expect(saidIn(declined).faults).toEqual([]);
      if (addition.path[0] !== 'dye') expect(commentsIn(declined)).toEqual(commentsIn(before));
      expect(saidIn(confirmed)).toEqual(saidIn(text));
      expect(toldIn(confirmed)).toEqual(toldIn(text));
      expect(confirmed).not.toContain('proposed');
    },
  );

  it('all proposals of a section, declined or confirmed together', () => {
    const before = laidOut(readNote(note).tree.root!, style);
    const text = apply(before, insertValues(readNote(before), additions.slice(0, 2)));
    const around = { reading: readNote(text), surroundings };
    const all = actionsAt(around, offsetOf(text, ['lens', 'power']));
    const decline = all.find(({ title }) => title.startsWith('Decline'));
    const inOneLine = text.split('proposed').length < 3;
    if (inOneLine) return;
    expect(apply(text, decline?.edits ?? [])).toBe(before);
  });

  it('a member of staff is renamed', () => {
    const before = laidOut(readNote(note).tree.root!, style);
    const after = apply(before, renameIn(readNote(before), { thing: 'staff', name: 'S-02' }, '0417'));
    expect(saidIn(after)).toEqual({
      faults: [],
      values: saidIn(before).values.map((value) => value.replace('=S-02', '=0417')),
    });
    expect(commentsIn(after)).toEqual(commentsIn(before));
  });
});
