import { describe, expect, it } from 'vitest';
import { baseOperation } from '../../server/src/note/checks/examples/base-operation.ts';
import { composeNote } from '../../server/src/note/checks/examples/compose.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import { textCheck } from '../../server/src/note/checks/check.ts';
import { checkById } from '../../server/src/note/checks/known-checks.ts';
import type { NoteSet } from '../../server/src/note/set/note-set.ts';
import { reviewNote, reviewReading, type Surroundings } from '../../server/src/note/review.ts';

const reason = 'changed after a second biometry';
const changed = composeNote(baseOperation, 'plan:\n  lens:\n    power: +22.5 D');
const checksOf = (text: string, department?: string): string[] =>
  reviewNote(text, { department: departmentOf(department) }).remarks.map(
    ({ check, severity }) => `${severity} ${check}`,
  );

function departmentOf(text: string | undefined) {
  const reading = text === undefined ? undefined : readNote(text, 'department');
  return reading?.kind === 'department' ? reading.note : null;
}

const setting = (check: string, severity: string): string =>
  `sideport: 1\nchecks:\n  - check: ${check}\n    severity: ${severity}\n    because: agreed in the department\n`;

/** The line that holds a text, with something behind it. */
function behind(text: string, line: string, comment: string, nth = 1): string {
  let met = 0;
  return text
    .split('\n')
    .map((one) => {
      if (one.trim() === line) met += 1;
      return one.trim() === line && met === nth ? `${one} ${comment}` : one;
    })
    .join('\n');
}

describe('an allowance', () => {
  it('behind the line takes the remark away', () => {
    const allowed = behind(changed, 'power: +21.5 D', `# allow implanted-power-differs-from-plan: ${reason}`, 2);
    expect(checksOf(changed)).toEqual(['error implanted-power-differs-from-plan']);
    expect(checksOf(allowed)).toEqual([]);
  });

  it('above a section counts for the section', () => {
    const comment = `# allow implanted-power-differs-from-plan: ${reason}\nlens:\n  maker: Halden Optics`;
    expect(checksOf(changed.replace('\nlens:\n  maker: Halden Optics', `\n${comment}`))).toEqual([]);
  });

  it('above the first line counts for the whole note', () => {
    expect(checksOf(`# allow implanted-power-differs-from-plan: ${reason}\n${changed}`)).toEqual([]);
  });

  it('elsewhere counts for nothing and is remarked as unused', () => {
    const elsewhere = behind(changed, 'urgency: elective', `# allow implanted-power-differs-from-plan: ${reason}`);
    expect(checksOf(elsewhere)).toEqual(['warning allowance-unused', 'error implanted-power-differs-from-plan']);
  });

  it('without a reason allows nothing', () => {
    const without = behind(changed, 'power: +21.5 D', '# allow implanted-power-differs-from-plan', 2);
    expect(checksOf(without)).toEqual(['error implanted-power-differs-from-plan', 'warning allowance-without-reason']);
  });

  it('of a check of side is refused, and the remark stays', () => {
    const wrong = composeNote(baseOperation, 'safety:\n  consent:\n    eye: left');
    const refused = behind(wrong, 'eye: left', '# allow consent-for-other-eye: the form is old');
    expect(checksOf(refused)).toEqual(['error consent-for-other-eye', 'error allowance-refused']);
  });
});

/** Whether a line cut short, an empty set or the like makes an allowance look as if nobody needed it. */
function unused(text: string, surroundings: Surroundings = {}): string[] {
  return reviewNote(text, surroundings)
    .remarks.filter(({ check }) => check === 'allowance-unused')
    .map(({ message }) => message);
}

describe('an allowance is not called unused', () => {
  const gap = `# allow indication-missing: told by word of mouth\n${composeNote(baseOperation, 'without: indication')}`;

  it('while a line is half typed and what is missing cannot be told', () => {
    expect(checksOf(gap)).toEqual([]);
    const halfTyped = gap.replace('\nseat:', '\nsea\nseat:');
    expect(halfTyped).not.toBe(gap);
    expect(checksOf(halfTyped)).toEqual(['error text-not-readable']);
  });

  it('while the value it speaks of is half typed', () => {
    const note = composeNote(baseOperation, 'preop:\n  pressure: 31 mmHg');
    const allowed = behind(note, 'pressure: 31 mmHg', '# allow unusual-value: seen twice');
    expect(checksOf(note)).toEqual(['warning unusual-value']);
    expect(unused(allowed)).toEqual([]);
    for (const typed of ['pressure:', 'pressure: 31 m', 'pressure: x'])
      expect(unused(allowed.replace('pressure: 31 mmHg', typed))).toEqual([]);
    expect(unused(allowed.replace('31 mmHg', '15 mmHg'))).toHaveLength(1);
  });

  const empty: NoteSet = { facts: [], open: () => undefined };

  it('while the other notes of the set are not read yet, or the note has no file', () => {
    const allowed = `# allow same-narrative-as-another: both eyes went alike\n${baseOperation}`;
    const file = 'note.opnote.yaml';
    expect(unused(allowed, { file })).toEqual([]);
    expect(unused(allowed, { set: empty })).toEqual([]);
    expect(unused(allowed, { file, set: empty })).toHaveLength(1);
  });

  it('where another remark says it as well, or the department silenced the check', () => {
    const allowed = behind(changed, 'power: +21.5 D', `# allow implanted-power-differs-from-plan: ${reason}`, 2);
    expect(checksOf(allowed, setting('implanted-power-differs-from-plan', 'off'))).toEqual([]);
  });

  it('where its check crashed', () => {
    const check = checkById('unusual-value');
    const failing = textCheck({
      ...check!,
      run: () => {
        throw new Error('fails');
      },
    });
    const { remarks } = reviewReading(readNote(`# allow unusual-value: seen\n${baseOperation}`), {}, [failing]);
    expect(remarks.map((remark) => remark.check)).toEqual(['note-not-fully-checked']);
  });
});

describe('an allowance behind a line that a remark speaks of', () => {
  it('counts as well as one on the line of the remark', () => {
    const planned = behind(changed, 'power: +22.5 D', `# allow implanted-power-differs-from-plan: ${reason}`);
    expect(planned).not.toBe(changed);
    expect(checksOf(planned)).toEqual([]);
  });

  it('but a whole section that it speaks of is not covered from above', () => {
    const above = changed.replace('\nplan:', `\n# allow implanted-power-differs-from-plan: ${reason}\nplan:`);
    expect(above).not.toBe(changed);
    expect(checksOf(above)).toEqual(['warning allowance-unused', 'error implanted-power-differs-from-plan']);
  });
});

describe('an allowance behind the mark of a proposal', () => {
  const marked = behind(
    changed,
    'power: +21.5 D',
    `# proposed from the dictation: “twenty one; half”; allow implanted-power-differs-from-plan: ${reason}`,
    2,
  ).replace('status: final', 'status: draft');

  it('still counts', () => {
    expect(checksOf(marked)).toEqual([]);
  });

  it('and stays when the proposal is confirmed', () => {
    const final = marked.replace('status: draft', 'status: final');
    const [open] = reviewNote(final).remarks;
    expect(open?.check).toBe('proposal-not-taken');
    const [edit] = open?.fixes[0]?.edits ?? [];
    const confirmed = final.slice(0, edit?.span.start) + edit?.text + final.slice(edit?.span.end);
    expect(confirmed).toContain(`power: +21.5 D # allow implanted-power-differs-from-plan: ${reason}\n`);
    expect(checksOf(confirmed)).toEqual([]);
  });

  it('can be deleted alone', () => {
    const same = marked.replace('power: +22.5 D', 'power: +21.5 D');
    const [remark] = reviewNote(same).remarks;
    expect(remark?.check).toBe('allowance-unused');
    const [edit] = remark?.fixes[0]?.edits ?? [];
    const without = same.slice(0, edit?.span.start) + edit?.text + same.slice(edit?.span.end);
    expect(without).toContain('# proposed from the dictation: “twenty one; half”\n');
  });
});

describe('a severity of the department', () => {
  it('raises, lowers and silences a check', () => {
    expect(checksOf(changed, setting('implanted-power-differs-from-plan', 'warning'))).toEqual([
      'warning implanted-power-differs-from-plan',
    ]);
    expect(checksOf(changed, setting('implanted-power-differs-from-plan', 'off'))).toEqual([]);
  });

  it('does not reach a check of side', () => {
    const wrong = composeNote(baseOperation, 'safety:\n  consent:\n    eye: left');
    for (const severity of ['off', 'info']) {
      expect(checksOf(wrong, setting('consent-for-other-eye', severity))).toEqual(['error consent-for-other-eye']);
    }
  });
});

describe('what is unfinished', () => {
  it.each([
    ['planned', []],
    ['draft', ['warning capsule-state-incomplete']],
    ['final', ['error capsule-state-incomplete']],
  ])('in a %s note weighs as much as it should', (status, expected) => {
    const text = composeNote(baseOperation, `without: capsule-state.posterior\nstatus: ${status}`);
    const found = checksOf(text).filter((remark) => remark.endsWith('capsule-state-incomplete'));
    expect(found).toEqual(expected);
  });

  it('is not asked for twice when it was misspelt, left empty or could not be read', () => {
    expect(checksOf(baseOperation.replace('\nfinish:', '\nfinsh:'))).toEqual(['error unknown-field']);
    expect(checksOf(baseOperation.replace('\nfinish: 10:26', '\nfinish:'))).toEqual(['error empty-value']);
    expect(checksOf(baseOperation.replace('\nfinish: 10:26', '\nfinish: soon'))).toEqual(['error unreadable-value']);
    expect(checksOf(baseOperation.replace('\nfinish: 10:26', '\nfinish 10:26'))).toEqual(['error text-not-readable']);
  });
});
