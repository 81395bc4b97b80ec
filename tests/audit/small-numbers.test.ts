import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { audit } from '../../server/src/note/audit/audit.ts';
import { mergePartials } from '../../server/src/note/audit/partial.ts';
import { auditHtml } from '../../server/src/note/audit/report/html.ts';
import { auditText } from '../../server/src/note/audit/report/text.ts';
import { operation, VISIT } from './facts.ts';
import { share, figure, type Figure, type Group } from '../../server/src/note/audit/figure.ts';
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
  });

  test('hidden numbers that are small together are found as one: a larger one is hidden with them', () => {
    expect(hidden(bySurgeon([3, 0, 44]))).toEqual([false, true, false, true]);
    expect(hidden(bySurgeon([1, 2, 44]))).toEqual([false, true, true, true]);
    expect(hidden(bySurgeon([1, 2, 2, 44]))).toEqual([false, true, true, true, false]);
  });

  test('where there is nothing else to hide, the total is hidden', () => {
    const figures = [share(TEXT, {}, 9, 100, 0), share(TEXT, { surgeon: 'S-0' }, 9, 100, 0)];
    const ratio = { ...TEXT, name: 'rupture-observed-expected' };
    const rate = { ...TEXT, name: 'posterior-capsule-rupture' };
    expect(hidden(figures)).toEqual([false, false]);
    // The part is hidden because the same ruptures are counted as four in another figure.
    expect(
      hidden([
        share(rate, {}, 9, 100, 0),
        share(rate, { surgeon: 'S-0' }, 9, 100, 0),
        share(ratio, {}, 9, 100, 0),
        share(ratio, { surgeon: 'S-0' }, 4, 90, 10),
      ]),
    ).toEqual([true, true, true, true]);
  });

  test('nothing of a hidden figure stays behind', () => {
    const [, first] = suppressSmallCells(bySurgeon([3, 9, 30]), 5);
    expect(first).toMatchObject({ value: null, count: null, n: null, missing: null, interval: null, suppressed: true });
  });

  const MEAN = { name: 'mean', label: 'Mean', method: 'mean', source: 'none' };
  const mean = (group: Group, n: number) => figure(MEAN, group, { value: 0.1, n, missing: 0 });

  test('a mean of fewer than five eyes is hidden, and that of the others when both could be told apart', () => {
    expect(
      hidden([mean({}, 47), mean({ surgeon: 'S-1' }, 2), mean({ surgeon: 'S-2' }, 1), mean({ surgeon: 'S-3' }, 44)]),
    ).toEqual([false, true, true, true]);
    expect(
      hidden([mean({}, 50), mean({ surgeon: 'S-1' }, 3), mean({ surgeon: 'S-2' }, 3), mean({ surgeon: 'S-3' }, 44)]),
    ).toEqual([false, true, true, false]);
  });

  test('a mean of all is hidden when all are fewer than five', () => {
    expect(hidden([mean({}, 4), mean({ surgeon: 'S-1' }, 4)])).toEqual([true, true]);
    expect(hidden([mean({}, 5), mean({ surgeon: 'S-1' }, 5)])).toEqual([false, false]);
  });

  test('a group of fewer than five operations shows nothing, whatever a figure counts', () => {
    const operations = (group: Group, n: number) =>
      figure({ ...MEAN, name: 'operations' }, group, { value: n, n, missing: 0 });
    const elements = (group: Group, n: number) => share({ ...MEAN, name: 'completeness' }, group, 10 * n, 20 * n, 0);
    const counts = [
      ['S-1', 2],
      ['S-2', 20],
      ['S-3', 30],
    ] as const;
    const figures = [operations, elements].flatMap((make) => [
      make({}, 52),
      ...counts.map(([surgeon, n]) => make({ surgeon }, n)),
    ]);
    expect(hidden(figures)).toEqual([false, true, true, false, false, true, true, false]);
    // How many operations were read describes the report and is said; nothing else of so few is.
    expect(hidden([operations({}, 3), elements({}, 3)])).toEqual([false, true]);
  });

  test('for the department itself nothing is hidden', () => {
    expect(hidden(bySurgeon([3, 9, 30]), 0)).toEqual([false, false, false, false]);
  });
});

describe('what is shown gives away nothing small', () => {
  // Tried from outside: only what is shown is used, and every total is held against its surgeons and its periods.
  const counts = fc.array(
    fc.record({
      surgeon: fc.constantFrom('S-1', 'S-2', 'S-3', 'S-4'),
      date: fc.constantFrom('2024-01-10', '2024-05-10', '2024-08-10', '2024-11-10'),
      rupture: fc.oneof({ weight: 4, arbitrary: fc.constant(false) }, fc.constant(true)),
      followed: fc.boolean(),
    }),
    { minLength: 1, maxLength: 60 },
  );
  test('by subtraction', () => {
    fc.assert(
      fc.property(counts, (drawn) => {
        const operations = drawn.map(({ followed: _followed, ...one }, at) => operation({ ...one, id: `OP-${at}` }));
        const followUps = drawn.flatMap(({ followed }, at) =>
          followed ? [{ ...VISIT, id: `FU-${at}`, operation: `OP-${at}`, date: '2024-12-01' }] : [],
        );
        const partial = mergePartials([{ version: 1, operations, followUps, amendments: [], unreadable: 0 }]);
        const { figures } = audit(partial, { asOf: '2025-01-01' });
        const truth = audit(partial, { asOf: '2025-01-01', suppressBelow: 0 }).figures;
        for (const total of figures.filter((one) => one.group['surgeon'] === undefined && !one.suppressed)) {
          for (const property of ['surgeon', 'period']) {
            const parts = figures.filter(
              (one) => one.name === total.name && isDividedBy(property, one.group, total.group),
            );
            const shown = parts.filter(({ suppressed }) => !suppressed);
            if (parts.length === 0 || shown.length === parts.length) continue;
            const left = (of: (one: Figure) => number | null) =>
              (of(total) ?? 0) - shown.reduce((sum, one) => sum + (of(one) ?? 0), 0);
            if (total.name === 'operations' && (total.n ?? 0) < 5) continue;
            for (const rest of [left(({ n }) => n), ...(total.sensitive ? [left(({ count }) => count)] : [])])
              expect(rest === 0 || rest >= 5).toBe(true);
            expect(parts.length - shown.length).toBeGreaterThan(1);
          }
        }
        for (const [at, { suppressed, n, count, sensitive, name, group }] of figures.entries()) {
          if (suppressed || (name === 'operations' && Object.keys(group).length === 0)) continue;
          expect(truth[at]?.name).toBe(name);
          if (truth[at]?.value !== null) expect(n === 0 || (n ?? 0) >= 5).toBe(true);
          if (sensitive) expect(count === 0 || (count ?? 0) >= 5).toBe(true);
        }
      }),
      { numRuns: 150 },
    );
  });
});

function isDividedBy(property: string, group: Group, whole: Group): boolean {
  const { [property]: divided, ...rest } = group;
  return divided !== undefined && JSON.stringify(rest) === JSON.stringify(whole);
}

describe('single notes', () => {
  const operations = Array.from({ length: 60 }, (_, at) =>
    operation({
      id: `OP-${String(at).padStart(4, '0')}`,
      surgeon: at % 2 === 0 ? 'S-1' : 'S-2',
      rupture: at % 4 < 2 && at > 20,
      reviews: [{ what: 'refraction', due: '2024-09-01' }],
    }),
  );
  const followUps = operations
    .slice(0, 20)
    .map(({ id }, at) => ({ ...VISIT, id: `FU-${at}`, operation: id, refractionD: at < 3 ? 2.5 : -0.25 }));
  const amendments = [{ record: 'amendment', id: 'AM-1', amends: 'OP-0007' }] as const;
  const partial = mergePartials([{ version: 1, operations, followUps, amendments, unreadable: 0 }]);

  test.each(['text', 'html', 'json'])('are named nowhere in what may be handed on: %s', (format) => {
    const published = audit(partial, { asOf: '2025-01-01' });
    const write = { text: auditText, html: auditHtml, json: JSON.stringify }[format] ?? String;
    const text = write(published);
    expect(text).not.toMatch(/OP-\d{4}|AM-1|FU-\d/);
    expect(text).not.toContain('3 eyes ended');
    expect(text).toContain(
      'Eyes ended 2 D or more from the prediction; their number is hidden because it is small. Look with --suppress-below 0, within the department.',
    );
  });
  test('are named within the department', () => {
    const text = auditText(audit(partial, { asOf: '2025-01-01', suppressBelow: 0 }));
    expect(text).toContain('3 eyes ended 2 D or more from the prediction.');
    expect(text).toContain('Notes: OP-0000, OP-0001, OP-0002.');
    expect(text).toContain('Notes: OP-0007.');
    expect(text).toMatch(/OP-00\d\d: refraction, due 2024-09-01/);
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
