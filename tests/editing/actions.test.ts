import { describe, expect, it } from 'vitest';
import { actionsAt } from '../../server/src/note/editing/actions/all-actions.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import { reviewNote, type Surroundings } from '../../server/src/note/review.ts';
import { apply, atCursor } from './mark.ts';

function titlesAt(marked: string, surroundings?: Surroundings): readonly string[] {
  const { around, offset } = atCursor(marked, surroundings);
  return actionsAt(around, offset).map(({ title }) => title);
}

/** The text after an action, read again: it must still be readable throughout. */
function act(marked: string, title: string, surroundings?: Surroundings): string {
  const { around, offset } = atCursor(marked, surroundings);
  const action = actionsAt(around, offset).find((each) => each.title === title);
  if (action === undefined) throw new Error(`No “${title}”, only: ${titlesAt(marked, surroundings).join(' | ')}`);
  const text = apply(around.reading.text, action.edits);
  expect(readNote(text).tree.faults).toEqual([]);
  return text;
}

const head = 'opnote: 1\nrecord: operation\nstatus: draft\nid: OP-1\n';

describe('an empty field', () => {
  it('is recorded as none, not done or not recorded, in the words it understands', () => {
    expect(titlesAt(`${head}dy‸e:\n`)).toEqual(['Record as “none”', 'Record as “not recorded”']);
    expect(act(`${head}dye:‸\n`, 'Record as “none”')).toBe(`${head}dye: none\n`);
    expect(act(`${head}capsulotomy‸:  \nring:\n  used: no\n`, 'Record as “not done”')).toBe(
      `${head}capsulotomy: not done\nring:\n  used: no\n`,
    );
    expect(titlesAt(`${head}dye: trypan blue‸\n`)).toEqual([]);
  });

  it('keeps its comment behind a blank, and what stands there unread', () => {
    expect(act(`${head}dye: ‸# to ask\n`, 'Record as “none”')).toBe(`${head}dye: none # to ask\n`);
    expect(act(`${head}ring:‸ # todo\n`, 'Record as “not recorded”')).toBe(`${head}ring: not recorded # todo\n`);
    for (const unread of ['dye: "trypan‸ blue\n', 'dye: !!str‸\n', 'dye: *other‸\n'])
      expect(titlesAt(`${head}${unread}`)).toEqual([]);
  });
});

describe('a clock hour', () => {
  // ISO 8429: 12 is 90°, and positions fall by 30° with each hour; the surgeon's view turns with the seat.
  it.each([
    ["11 o'clock", '120°'],
    ["12 o'clock", '90°'],
    ["3 o'clock", '0°'],
    ['half past 3', undefined],
    ["3:30 o'clock", '345°'],
  ])('%s is written as %s', (written, degrees) => {
    const text = `${head}incisions:\n  - at: ${written}‸\n`;
    const titles = titlesAt(text).filter((title) => title.startsWith('Write the clock'));
    expect(titles).toEqual(degrees === undefined ? [] : [`Write the clock hour as ${degrees}`]);
  });

  it('of the surgeon’s own view needs the eye and the seat', () => {
    const at = "incisions:\n  - at: 6 o'clock, surgeon's view‸\n";
    expect(titlesAt(head + at)).toEqual([]);
    expect(act(`${head}eye: right\nseat: temporal\n${at}`, 'Write the clock hour as 180°')).toContain('- at: 180°\n');
    expect(act(`${head}eye: left\nseat: temporal\n${at}`, 'Write the clock hour as 0°')).toContain('- at: 0°\n');
  });

  it('in an offset leaves the distance alone', () => {
    const text = `${head}capsulotomy:\n  off-centre: 0.3 mm toward 9 o'clock‸\n`;
    expect(act(text, 'Write the clock hour as 180°')).toBe(`${head}capsulotomy:\n  off-centre: 0.3 mm toward 180°\n`);
  });
});

describe('a bare number', () => {
  it('gets the unit that it counts in', () => {
    expect(act(`${head}preop:\n  pupil: 7.50‸\n`, 'Write the unit: 7.50 mm')).toBe(`${head}preop:\n  pupil: 7.50 mm\n`);
    expect(titlesAt(`${head}preop:\n  pupil: 7.5 mm‸\n`)).toEqual([]);
    expect(titlesAt(`${head}lens:\n  pieces: 1‸\n`)).toEqual([]);
  });
});

describe('a scanned label', () => {
  const department = reviewNote(
    'sideport: 1\nlenses:\n  - maker: Halden Optics\n    model: HX-1\n    device-identifier: "09521234543213"\n',
    {},
    'department',
  ).reading;
  const surroundings: Surroundings = { department: department.kind === 'department' ? department.note : null };

  it('fills the fields of the lens as proposals that a final note may not keep', () => {
    // Bracketed text of the GS1 General Specifications; check digit of the published example GTIN 9521234543213.
    const text = `${head}date: 2031-03-14\nlens:\n  power: +5.5 D\n  udi: (01)09521234543213(17)340600(10)L2031A(21)0040719052‸\n`;
    expect(act(text, 'Fill maker, model, serial, lot, expiry from the scanned label', surroundings)).toBe(
      `${head}date: 2031-03-14\nlens:\n` +
        '  maker: Halden Optics # proposed from the label\n  model: HX-1 # proposed from the label\n  power: +5.5 D\n' +
        '  serial: "0040719052" # proposed from the label\n  lot: L2031A # proposed from the label\n  expiry: 2034-06 # proposed from the label\n' +
        '  udi: (01)09521234543213(17)340600(10)L2031A(21)0040719052\n',
    );
  });

  it('leaves alone what is written already', () => {
    const text = `${head}lens:\n  serial: "1"\n  lot: not recorded\n  udi: (01)09521234543213(17)340600(21)0040719052‸\n`;
    expect(titlesAt(text)).toContain('Fill expiry from the scanned label');
  });
});

describe('a complication', () => {
  it('gets its account', () => {
    const text = `${head}complications:\n  - what: vitreous loss‸\n    when: cortex\nspecimens: none\n`;
    expect(act(text, "Record the complication's account")).toBe(
      `${head}complications:\n  - what: vitreous loss\n    when: cortex\n    account: \nspecimens: none\n`,
    );
  });

  it.each([
    [
      'complications: none\n',
      'complications:\n  - what: posterior capsule rupture\n    when: \n    action: \n    account: \n',
    ],
    ['', 'complications:\n  - what: posterior capsule rupture\n    when: \n    action: \n    account: \n'],
    [
      'complications:\n  - what: wound leak\n',
      'complications:\n  - what: wound leak\n  - what: posterior capsule rupture\n    when: \n    action: \n    account: \n',
    ],
  ])('that the capsule shows is begun where it is missing: %j', (before, after) => {
    const text = `${head}capsule-state:\n  posterior: torn‸\n${before}`;
    expect(act(text, 'Record the account of the posterior capsule rupture')).toBe(
      `${head}capsule-state:\n  posterior: torn\n${after}`,
    );
  });

  it.each([
    ['fields without a dash', 'complications:\n  what: wound leak\n  action: suture\n'],
    ['entries in brackets', 'complications: [{what: wound leak}]\n'],
    ['a text that is not understood', 'complications: the wound leaked\n'],
  ])('is not begun beside %s', (_, before) => {
    expect(titlesAt(`${head}capsule-state:\n  posterior: torn‸\n${before}`)).toEqual([]);
  });

  it('whose account is begun gets no second one', () => {
    expect(titlesAt(`${head}complications:\n  - what: vitreous‸ loss\n    account:\n`)).toEqual([]);
    expect(titlesAt(`${head}complications:\n  - what: vitreous‸ loss\n    account: none\n`)).toEqual([]);
  });

  it('leaves marks and allowances on their lines', () => {
    const marked = `${head}complications:\n  - what: vitreous‸ loss # allow vitreous-without-vitrectomy: because\n    action: anterior vitrectomy # confirm\n`;
    expect(act(marked, "Record the complication's account")).toBe(`${marked.replace('‸', '')}    account: \n`);
  });

  it('that is recorded already is not begun again', () => {
    expect(
      titlesAt(`${head}capsule-state:\n  posterior: torn‸\ncomplications:\n  - what: posterior capsule rupture\n`),
    ).toEqual([]);
  });
});

describe('a value that waits for confirmation', () => {
  it('is confirmed by taking the mark away', () => {
    expect(act(`${head}seat: temporal‸ # confirm\n`, 'Confirm this value: I have checked it')).toBe(
      `${head}seat: temporal\n`,
    );
  });
});

describe('a follow-up file', () => {
  it.each(['"00:1 # 2"', '"0417"', "'1e5'"])('keeps the quotes of %s', (id) => {
    const { around, offset } = atCursor(`opnote: 1\nrecord: operation\nid: ${id}‸\npatient:\n  ref: "007"\n`);
    const made = readNote(actionsAt(around, offset).find(({ newFile }) => newFile !== undefined)?.newFile?.text ?? '');
    const values = made.values.map(({ field }) => field.text);
    expect(values).toEqual(expect.arrayContaining([id.slice(1, -1), '007']));
    expect(made.remarks.filter(({ check }) => check !== 'empty-value')).toEqual([]);
  });

  it('points to the operation and leaves the eye to the examiner', () => {
    const { around, offset } = atCursor('opnote: 1\nrecord: operation\nid: OP-1‸\neye: left\npatient:\n  ref: P-1\n');
    const action = actionsAt(around, offset).find(({ newFile }) => newFile !== undefined);
    expect(action?.newFile?.suffix).toBe('follow-up');
    const made = readNote(action?.newFile?.text ?? '');
    expect(made.kind).toBe('follow-up');
    expect(made.values.map(({ field }) => `${field.path.join('.')}=${field.text}`)).toEqual([
      'opnote=1',
      'record=follow-up',
      'status=draft',
      'operation=OP-1',
      'patient.ref=P-1',
    ]);
  });
});
