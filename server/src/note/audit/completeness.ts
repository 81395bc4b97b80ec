import type { Case } from './cases.ts';
import type { PeriodLength } from './dates.ts';
import { ELEMENTS, type NoteElement } from './elements.ts';
import { share, type Figure, type Group } from './figure.ts';
import { byPeriod, type CaseGroup } from './group.ts';

const METHOD = 'share of final operation notes in which the element is recorded';
const COMPARE = {
  value: 85.3,
  source: 'Tanveer et al., Cureus 2023;15(12):e51274 (125 ophthalmic notes after teaching, all criteria together)',
};

/** All elements of all notes of a group together. */
export function completeness({ group, cases }: CaseGroup): Figure {
  const present = cases.reduce((sum, one) => sum + one.operation.elements.length, 0);
  const { interval: _dependent, ...whole } = share(
    {
      name: 'completeness',
      label: 'Completeness of notes, all elements',
      method: `elements recorded over elements asked for, ${ELEMENTS.length} per note; no interval, because the elements of one note are not independent`,
      source: 'elements and who asks for each: see the table of elements',
      benchmarks: [COMPARE],
    },
    group,
    present,
    cases.length * ELEMENTS.length,
    0,
  );
  return { ...whole, interval: null };
}

function elementShare(element: NoteElement, group: Group, cases: readonly Case[]): Figure {
  const count = cases.filter((one) => one.operation.elements.includes(element.id)).length;
  return share(
    { name: 'element-recorded', label: element.label, method: METHOD, source: element.source },
    { element: element.id, ...group },
    count,
    cases.length,
    0,
  );
}

/** Each element in the whole set and in each period. */
export function elementShares(cases: readonly Case[], length: PeriodLength): readonly Figure[] {
  const periods = byPeriod(cases, length);
  return ELEMENTS.flatMap((element) => [
    elementShare(element, {}, cases),
    ...periods.map((period) => elementShare(element, period.group, period.cases)),
  ]);
}
