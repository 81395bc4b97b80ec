import { mean, median } from '../statistics/summaries.ts';
import { REFRACTION_WINDOW, type Case } from './cases.ts';
import { figure, shareOf, type Figure, type FigureText } from './figure.ts';
import type { CaseGroup } from './group.ts';

const WINDOW = `the last visit ${REFRACTION_WINDOW.fromDays} to ${REFRACTION_WINDOW.toDays} days after the operation`;
const SCHEME =
  'best corrected, else pinhole, else uncorrected; counting fingers and hand motion by the scheme of Schulze-Bonsel et al., IOVS 2006;47:1236-40; perception of light and less has no number and counts as missing';
const SOURCE = 'averaging on the logMAR scale: Holladay, J Cataract Refract Surg 2004 (from memory)';

const BEFORE: FigureText = {
  name: 'acuity-before-median',
  label: 'Acuity before, median',
  unit: 'logMAR',
  method: `median; ${SCHEME}`,
  source: SOURCE,
};
const AFTER: FigureText = {
  name: 'acuity-after-median',
  label: 'Acuity after, median',
  unit: 'logMAR',
  method: `median at ${WINDOW}; ${SCHEME}`,
  source: SOURCE,
};
const CHANGE: FigureText = {
  name: 'acuity-change-mean',
  label: 'Change of acuity, mean (minus = better)',
  unit: 'logMAR',
  method: `mean of after minus before in the same eye, at ${WINDOW}; ${SCHEME}`,
  source: SOURCE,
};
const WORSE: FigureText = {
  name: 'acuity-loss',
  label: 'Eyes that lost two lines or more',
  method: `share of eyes with both acuities whose logMAR rose by 0.2 or more; ${SCHEME}`,
  source: 'five letters = one line = 0.1 logMAR (ETDRS convention)',
  sensitive: true,
};
// 0.5 - 0.3 is 0.2 and a hair in binary arithmetic, or a hair less.
const LOSS = 0.2 - 1e-9;

const before = (one: Case): number | null => one.operation.acuityBefore?.logMar ?? null;
const after = (one: Case): number | null => one.acuity?.value.logMar ?? null;

function change(one: Case): number | null {
  const first = before(one);
  const last = after(one);
  return first === null || last === null ? null : last - first;
}

/** Acuity before and after, and its change in the same eyes. */
export function acuity({ group, cases }: CaseGroup): readonly Figure[] {
  const known = (valueOf: (one: Case) => number | null): readonly number[] =>
    cases.map(valueOf).filter((value) => value !== null);
  const of = (text: FigureText, values: readonly number[], value: number | null): Figure =>
    figure(text, group, { value, n: values.length, missing: cases.length - values.length });
  const [first, last, changes] = [known(before), known(after), known(change)];
  return [
    of(BEFORE, first, median(first)),
    of(AFTER, last, median(last)),
    of(CHANGE, changes, mean(changes)),
    shareOf(WORSE, group, cases, (one) => {
      const lost = change(one);
      return lost === null ? null : lost >= LOSS;
    }),
  ];
}
