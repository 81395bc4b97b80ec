import { describe, expect, it } from 'vitest';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import { complete } from '../../server/src/note/editing/complete.ts';
import { choose, CURSOR, labelsAt, proposalsAt } from './mark.ts';

describe('fields', () => {
  it('are those still missing, in the order of an operation, the next one first', () => {
    const labels = labelsAt('opnote: 1\nrecord: operation\nid: OP-1\n‸');
    expect(labels.slice(0, 3)).toEqual(['date', 'start', 'finish']);
    expect(labels.at(-1)).toBe('status');
    expect(labels).not.toContain('opnote');
  });

  it('of an entry of a list stand below its first one', () => {
    const note = 'opnote: 1\nincisions:\n  - kind: main\n    ‸';
    expect(labelsAt(note).slice(0, 2)).toEqual(['at', 'width']);
    expect(choose(note, 'at')).toBe('opnote: 1\nincisions:\n  - kind: main\n    at: ');
  });

  it('get the indentation of what they belong to, wherever the cursor stands', () => {
    const start = 'opnote: 1\npreop:\n  biometry:\n    axial-length: 23.50 mm\n';
    expect(choose(`${start}‸`, 'k1')).toBe(`${start}    k1: `);
    expect(choose(`${start}k‸`, 'k1')).toBe(`${start}    k1: `);
    expect(choose(`${start}    ‸`, 'k1')).toBe(`${start}    k1: `);
    expect(choose(`${start}      k‸`, 'k1')).toBe(`${start}    k1: `);
    expect(choose(`${start}  ‸`, 'pupil')).toBe(`${start}  pupil: `);
    expect(choose(`${start}lens‸`, 'lens')).toBe(`${start}lens:\n  `);
    expect(labelsAt(`${start}  ‸`)[0]).toBe('pupil');
  });

  it('are kept out where they would tear the lines below from their section', () => {
    const labels = labelsAt('opnote: 1\npreop:\n  pressure: 15 mmHg\n‸\n  pupil: 7.0 mm\nplan:\n  target: 0 D\n');
    expect(labels).toContain('refraction');
    expect(labels).not.toContain('lens');
  });

  it.each([2, 4])('follow an indentation of %i blanks', (blanks) => {
    const by = ' '.repeat(blanks);
    const start = `opnote: 1\npreop:\n${by}pressure: 15 mmHg\n`;
    expect(choose(`${start}${by}‸`, 'pupil')).toBe(`${start}${by}pupil: `);
    expect(choose(`${start}‸`, 'pupil')).toBe(`${start}${by}pupil: `);
  });

  it('of a section with nothing in it yet are one step deeper', () => {
    const start = 'opnote: 1\ncapsulotomy:\n';
    expect(choose(`${start}‸`, 'technique')).toBe(`${start}  technique: `);
    expect(choose(`${start}  te‸`, 'technique')).toBe(`${start}  technique: `);
  });

  it('come with the dash of a list', () => {
    const start = 'opnote: 1\nincisions:\n  - kind: main\n    at: temporal\n';
    expect(choose(`${start}  - ‸`, 'kind')).toBe(`${start}  - kind: `);
    expect(choose(`${start}  ‸`, '- incision')).toBe(`${start}  - `);
    expect(choose('opnote: 1\nincisions:\n  - ‸', 'kind')).toBe('opnote: 1\nincisions:\n  - kind: ');
    expect(choose('opnote: 1\n‸', 'incisions')).toBe('opnote: 1\nincisions:\n  - ');
  });

  it('are proposed only on a line that is blank otherwise', () => {
    expect(labelsAt('opnote: 1\nki‸nd: main\n')).toEqual([]);
    expect(labelsAt('opnote: 1\neye: left ‸# dominant\n').slice(0, 1)).not.toContain('date');
    expect(labelsAt('opnote: 1\n# ‸\n')).toEqual([]);
    expect(labelsAt('opnote: 1\neye‸: left\n')).toEqual([]);
  });

  it('do not swallow the line below a half-typed one', () => {
    const text = 'opnote: 1\neye: right\nle‸\ncomplications: none\n';
    expect(choose(text, 'lens')).toBe('opnote: 1\neye: right\nlens:\n  \ncomplications: none\n');
    expect(labelsAt(text)).not.toContain('complications');
  });

  it('of the kind of record that is written', () => {
    expect(labelsAt('opnote: 1\nrecord: follow-up\n‸')).toContain('visit');
    expect(labelsAt('opnote: 1\nrecord: follow-up\n‸')).not.toContain('incisions');
  });

  it('begin an empty note', () => {
    expect(labelsAt('‸').slice(0, 3)).toEqual(['opnote', 'record', 'status']);
    expect(choose('\uFEFF‸', 'opnote')).toBe('\uFEFFopnote: ');
  });

  it('that can be said to be none say it in one word, at the writer’s choice', () => {
    expect(choose('opnote: 1\n‸', 'complications: none')).toBe('opnote: 1\ncomplications: none');
  });
});

describe('whole sections', () => {
  it('have a place at each usual field, and nothing filled in', () => {
    expect(choose('opnote: 1\n‸', 'capsulotomy …')).toBe(
      'opnote: 1\ncapsulotomy:\n  technique: ‹1›\n  diameter: ‹2› mm\n  off-centre: ‹3›\n  outcome: ‹4›‹0›',
    );
  });

  it('begin a list with its first entry', () => {
    expect(choose('opnote: 1\n‸', 'incisions …')).toBe(
      'opnote: 1\nincisions:\n  - kind: ‹1›\n    at: ‹2›\n    width: ‹3› mm\n    plane: ‹4›‹0›',
    );
  });

  it('hold the sections below them', () => {
    expect(choose('opnote: 1\n‸', 'nucleus …')).toContain('  steps:\n    - step: ‹2›\n      bottle-height: ‹3› cm\n');
  });

  it('can be read at once, with nothing but empty values to remark on', () => {
    for (const { label, snippet } of proposalsAt('opnote: 1\nrecord: operation\n‸')) {
      if (snippet !== true) continue;
      const filled = choose('opnote: 1\nrecord: operation\n‸', label).replace(/‹\d+›(?: [^\n]+|°)?/g, '');
      const checks = readNote(filled).remarks.map(({ check }) => check);
      expect(checks.filter((check) => check !== 'empty-value' && check !== 'expected-list')).toEqual([]);
    }
  });
});

describe('values', () => {
  it('are the terms of the vocabulary, and come only behind a colon and a blank', () => {
    expect(labelsAt('opnote: 1\neye: ‸')).toEqual(['right', 'left', 'not recorded']);
    expect(labelsAt('opnote: 1\neye:‸')).toEqual([]);
    expect(choose('opnote: 1\neye: l‸', 'left')).toBe('opnote: 1\neye: left');
    expect(choose('opnote: 1\neye: ‸\nseat: superior\n', 'left')).toBe('opnote: 1\neye: left\nseat: superior\n');
  });

  it('replace the whole value, with blanks in it, and keep the comment behind it', () => {
    expect(choose('opnote: 1\nprocedure: phaco‸ and iol # as listed\n', 'phacoemulsification with lens')).toBe(
      'opnote: 1\nprocedure: phacoemulsification with lens # as listed\n',
    );
  });

  it('find a term by its synonym', () => {
    const [lens] = proposalsAt('opnote: 1\nlens:\n  placed: ‸');
    expect(lens).toMatchObject({ label: 'capsular bag' });
    expect(lens?.filter).toContain('in the bag');
  });

  it('are offered in brackets, without those already there', () => {
    expect(labelsAt('opnote: 1\ncomorbidity: [glaucoma, ‸]')).not.toContain('glaucoma');
    expect(choose('opnote: 1\ncomorbidity: [glaucoma, high‸]', 'high myopia')).toBe(
      'opnote: 1\ncomorbidity: [glaucoma, high myopia]',
    );
    expect(choose('opnote: 1\ncomorbidity: [gl‸, high myopia]', 'glaucoma')).toBe(
      'opnote: 1\ncomorbidity: [glaucoma, high myopia]',
    );
  });

  it('are offered behind the dash of a list of terms', () => {
    const text = 'opnote: 1\ncomorbidity:\n  - glaucoma\n  - hi‸';
    expect(choose(text, 'high myopia')).toBe('opnote: 1\ncomorbidity:\n  - glaucoma\n  - high myopia');
    expect(labelsAt(text)).not.toContain('glaucoma');
  });

  it('end a number with its unit, once a blank says that the number is complete', () => {
    const text = 'opnote: 1\nincisions:\n  - kind: main\n    width: 2.2';
    expect(labelsAt(`${text}‸`)).not.toContain('2.2 mm');
    expect(choose(`${text} ‸`, '2.2 mm')).toBe(`${text} mm`);
    expect(choose(`${text} m‸`, '2.2 mm')).toBe(`${text} mm`);
  });

  it('say which word stands for nothing there, last', () => {
    expect(labelsAt('opnote: 1\ndye: ‸').slice(-2)).toEqual(['none', 'not recorded']);
    expect(labelsAt('opnote: 1\ncomplications: ‸')).toEqual(['none', 'not recorded']);
  });

  it('are not offered within prose, quotes or blocks', () => {
    expect(labelsAt('opnote: 1\nfindings: deep cham‸')).toEqual([]);
    expect(labelsAt('opnote: 1\nfindings: no‸')).toEqual([]);
    expect(labelsAt('opnote: 1\nfindings: not r‸')).toEqual(['not recorded']);
    expect(labelsAt('opnote: 1\neye: "le‸')).toEqual([]);
    expect(labelsAt('opnote: 1\nfree-text: |\n  the eye: ‸\n')).toEqual([]);
    expect(labelsAt('opnote: 1\nunheard-of: ‸')).toEqual([]);
  });
});

function departmentOf(text: string) {
  const reading = readNote(text, 'department');
  return reading.kind === 'department' ? reading.note : null;
}

function department(marked: string): readonly string[] {
  const reading = readNote(marked.replace(CURSOR, ''), 'department');
  return complete({ reading, surroundings: {} }, marked.indexOf(CURSOR)).map(({ label }) => label);
}

describe('notations', () => {
  it('have a form with a place for each number, and stay away once something is typed', () => {
    expect(choose('opnote: 1\npreop:\n  refraction: ‸', 'sphere / cylinder x axis')).toBe(
      'opnote: 1\npreop:\n  refraction: ‹1› / ‹2› x ‹3›',
    );
    expect(choose('opnote: 1\npreop:\n  biometry:\n    k1: ‸', 'power @ meridian')).toBe(
      'opnote: 1\npreop:\n  biometry:\n    k1: ‹1› D @ ‹2›',
    );
    expect(labelsAt('opnote: 1\npreop:\n  refraction: -1‸')).toEqual([]);
    expect(labelsAt('opnote: 1\npreop:\n  acuity:\n    corrected: ‸').slice(0, 4)).toEqual(['CF', 'HM', 'PL', 'NPL']);
  });

  it.each([
    ['right', 'temporal', '180° in a right eye'],
    ['left', 'temporal', '0° in a left eye'],
    ['left', 'superonasal', '135° in a left eye'],
  ])('name the places of a %s eye with their position on the dial: %s', (eye, site, detail) => {
    // ISO 8429 (dial), and where the nose is.
    const proposals = proposalsAt(`opnote: 1\nrecord: operation\neye: ${eye}\nincisions:\n  - kind: main\n    at: ‸`);
    expect(proposals.find(({ label }) => label === site)?.detail).toBe(detail);
  });

  it('of an offset have the distance and the direction', () => {
    const text = 'opnote: 1\nrecord: operation\ncapsulotomy:\n  off-centre: ‸';
    expect(labelsAt(text)[0]).toBe('centred');
    expect(choose(text, '… mm toward nasal')).toBe(
      'opnote: 1\nrecord: operation\ncapsulotomy:\n  off-centre: ‹1› mm toward nasal',
    );
  });
});

describe('what follows from the note and the department', () => {
  const surroundings = {
    today: '2031-03-20',
    department: departmentOf('sideport: 1\nreview-schedule:\n  - what: retina\n    due: 4 weeks\n    when: long eye\n'),
  };

  it('are the planned reviews and when they are due', () => {
    const start = 'opnote: 1\nrecord: operation\nreviews:\n  - what: ';
    const [retina] = proposalsAt(`${start}‸`, surroundings);
    expect(retina).toMatchObject({ label: 'retina', detail: 'review schedule, long eye', filter: '…' });
    expect(labelsAt(`${start}retina\n    due: ‸`, surroundings)[0]).toBe('4 weeks');
  });

  it('are the codes that the recorded facts suggest, with the caution beside them', () => {
    const text =
      'opnote: 1\nrecord: operation\neye: left\nprocedure: phacoemulsification with lens\ndiagnosis:\n  cataract: [nuclear]\nlens:\n  placed: capsular bag\ncodes:\n  - system: ICD-10-PCS\n    code: ‸';
    const [code] = proposalsAt(text);
    // ICD-10-PCS: body part J is the lens of the right eye, K of the left.
    expect(code?.label).toBe('08RK3JZ');
    expect(code?.explanation).toContain('for a coder to confirm');
  });

  it('is today for a signature, whose time is left to the signer', () => {
    expect(
      choose('opnote: 1\nrecord: operation\nsigned:\n  - by: S-02\n    at: ‸', '2031-03-20T…', surroundings),
    ).toContain('at: 2031-03-20T‹1›+‹2›');
  });
});

describe('names of the format itself', () => {
  it('are proposed where a remark is allowed', () => {
    const text = 'opnote: 1\n# allow unusual‸\npreop:\n  pupil: 2 mm\n';
    expect(choose(text, 'unusual-value')).toBe('opnote: 1\n# allow unusual-value: \npreop:\n  pupil: 2 mm\n');
    expect(labelsAt('opnote: 1\n# allow ‸')).not.toContain('eye-missing');
    expect(labelsAt('opnote: 1\n# any comment ‸')).toEqual([]);
  });

  it('are proposed in a department file', () => {
    expect(department('sideport: 1\nchecks:\n  - check: ‸')).toContain('unknown-word');
    expect(department('sideport: 1\nalso-required:\n  - ‸')).toContain('preop.endothelial-count');
    expect(department('sideport: 1\n‸')).toContain('lenses');
  });
});
