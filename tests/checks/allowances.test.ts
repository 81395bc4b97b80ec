import { describe, expect, it } from 'vitest';
import { baseOperation } from '../../server/src/note/checks/examples/base-operation.ts';
import { composeNote } from '../../server/src/note/checks/examples/compose.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import { reviewNote } from '../../server/src/note/review.ts';

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
