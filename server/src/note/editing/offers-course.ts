import type { Department, Operation, Path } from '@sideport/schemas';
import { codingFacts } from '../codes/facts-of-note.ts';
import { CODING_CAUTION, suggestCodes } from '../codes/suggest.ts';
import type { Offer } from './offer.ts';

/** What the department plans after every operation, and when. */
export function reviewsOfSchedule(
  path: Path,
  where: string,
  note: Operation | undefined,
  department: Department | null,
): readonly Offer[] {
  const schedule = department?.['review-schedule']?.items ?? [];
  if (where === 'reviews.what') {
    return schedule.map(({ what, when }) => ({
      text: what?.text ?? '',
      from: `review schedule, ${when?.text ?? 'always'}`,
    }));
  }
  if (where !== 'reviews.due') return [];
  const what = note?.reviews?.items.find(({ $ }) => $.path[1] === path[1])?.what?.value;
  return schedule
    .filter((review) => review.what?.value === what)
    .map(({ due }) => ({ text: due?.text ?? '', from: 'review schedule' }));
}

/** The codes that the recorded facts suggest in the system of the entry; the coder's choice stands. */
export function suggestedCodes(path: Path, where: string, note: Operation | undefined): readonly Offer[] {
  const system = note?.codes?.items.find(({ $ }) => $.path[1] === path[1])?.system?.value;
  if (where !== 'codes.code' || note === undefined || system === undefined) return [];
  const set = system === 'ICD-10-CM' || system === 'ICD-10-PCS' ? 'icd10cm' : 'icd10-opcs4';
  return suggestCodes(codingFacts(note), set)
    .suggestions.filter((suggestion) => suggestion.system === system)
    .map(({ code, title, rule }) => ({
      text: code,
      from: title,
      explanation: `${rule.says} ${CODING_CAUTION}`,
    }));
}
