import type { CodingFacts } from './facts.ts';
import { notCoded, type NotCoded } from './suggestion.ts';

// Source: ICD-10-PCS Official Guidelines for Coding and Reporting, B3.3 (seen second-hand): what was done is coded.
const WHY = {
  'not done':
    'the note says that the lens was not taken out, and only what was done is coded; an operation that was broken off is for a coder',
  abandoned:
    'the operation was abandoned, and the note does not say whether the lens was taken out; only what was done is coded',
} as const;

/** What the name of the procedure promises and the note does not bear out, and a ring that did not stay. */
export function notDone({ brokenOff, ringNotKept }: CodingFacts): readonly NotCoded[] {
  return [
    ...(brokenOff ? [notCoded('the operation as it is named', WHY[brokenOff.value], [brokenOff])] : []),
    ...(ringNotKept
      ? [notCoded('tension ring', `it did not stay in its place: ${ringNotKept.value}`, [ringNotKept])]
      : []),
  ];
}
