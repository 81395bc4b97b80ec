import { describe, expect, test } from 'vitest';
import { audit } from '../../server/src/note/audit/audit.ts';
import { mergePartials } from '../../server/src/note/audit/partial.ts';
import { operation } from './facts.ts';
import { share, figure, type Figure } from '../../server/src/note/audit/figure.ts';
import { suppressSmallCells } from '../../server/src/note/audit/suppression.ts';

const TEXT = { name: 'event', label: 'Event', method: 'share', source: 'none', sensitive: true };

function bySurgeon(counts: readonly number[]): readonly Figure[] {
  const total = counts.reduce((sum, count) => sum + count, 0);
  return [
    share(TEXT, {}, total, 100 * counts.length, 0),
    ...counts.map((count, at) => share(TEXT, { surgeon: `S-${at}` }, count, 100, 0)),
  ];
}

function hidden(figures: readonly Figure[], below = 5): readonly boolean[] {
  return suppressSmallCells(figures, below).map((one) => one.suppressed);
}

describe('small numbers', () => {
  test('one to four events are hidden, none and five are shown', () => {
    expect(hidden(bySurgeon([0, 5, 4, 1]))).toEqual([false, false, false, true, true]);
  });

  test('a single hidden number could be found by subtraction: the next smallest is hidden with it', () => {
    expect(hidden(bySurgeon([3, 9, 30]))).toEqual([false, true, true, false]);
    expect(hidden(bySurgeon([3, 0, 44]))).toEqual([false, true, true, false]);
  });

  test('nothing of a hidden figure stays behind', () => {
    const [, first] = suppressSmallCells(bySurgeon([3, 9, 30]), 5);
    expect(first).toMatchObject({ value: null, count: null, interval: null, suppressed: true });
  });

  test('a mean of fewer than five eyes is hidden as well, the mean of all is not', () => {
    const text = { name: 'mean', label: 'Mean', method: 'mean', source: 'none' };
    const figures = [
      figure(text, {}, { value: 0.1, n: 4, missing: 0 }),
      figure(text, { surgeon: 'S-0' }, { value: 0.1, n: 4, missing: 0 }),
      figure(text, { surgeon: 'S-1' }, { value: 0.1, n: 5, missing: 0 }),
    ];
    expect(hidden(figures)).toEqual([false, true, false]);
  });

  test('for the department itself nothing is hidden', () => {
    expect(hidden(bySurgeon([3, 9, 30]), 0)).toEqual([false, false, false, false]);
  });
});

describe('what must be looked at', () => {
  // Two surgeons: hiding the one with 3 hides the one with 30 as well, because they add up to the whole.
  const operations = Array.from({ length: 400 }, (_, at) =>
    operation({
      id: `OP-${String(at).padStart(4, '0')}`,
      surgeon: at % 2 === 0 ? 'S-0' : 'S-1',
      rupture: at % 2 === 0 ? at < 6 : at < 60,
    }),
  );
  const partial = mergePartials([{ version: 1, operations, followUps: [], amendments: [], unreadable: 0 }]);

  test('is said in words where the numbers are hidden', () => {
    const { figures, standOuts, plots } = audit(partial, { asOf: '2025-01-01' });
    const rates = figures.filter(({ name, group }) => name === 'posterior-capsule-rupture' && 'surgeon' in group);
    expect(rates.map(({ suppressed }) => suppressed)).toEqual([true, true]);
    const said = standOuts.filter(({ group }) => group['surgeon'] === 'S-1');
    expect(said.map(({ kind }) => kind)).toEqual(['rupture-hidden']);
    expect(said[0]?.message).not.toMatch(/\d (?:%|operations)|30/);
    expect(plots.charts).toEqual([]);
  });

  test('is said with numbers within the department', () => {
    const { standOuts } = audit(partial, { asOf: '2025-01-01', suppressBelow: 0 });
    expect(standOuts.find(({ kind }) => kind === 'rupture-alarm')?.message).toMatch(/surgeon S-1.*200 operations/);
  });
});
