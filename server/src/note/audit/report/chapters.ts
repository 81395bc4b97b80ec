import type { Audit } from '../audit.ts';
import type { Figure } from '../figure.ts';

/** One chapter of the report: which figures it shows, and what must be said above them. */
export interface Chapter {
  readonly id: string;
  readonly title: string;
  readonly figures: readonly Figure[];
  readonly caution: string;
}

interface ChapterPlan extends Omit<Chapter, 'figures'> {
  readonly names: readonly string[];
}

const PLANS: readonly ChapterPlan[] = [
  {
    id: 'case-mix',
    title: 'Case mix',
    names: [
      'operations',
      'age-median',
      'axial-length-median',
      'long-eyes',
      'female',
      'second-eyes',
      'comorbidity',
      'difficulty',
    ],
    caution: 'Compare surgeons only with their case mix in view.',
  },
  {
    id: 'complications',
    title: 'Complications',
    names: ['any-complication', 'any-later-complication', 'complication', 'later-complication'],
    caution: 'A note that says nothing about complications counts as missing, not as free of them.',
  },
  {
    id: 'rupture',
    title: 'Posterior capsule rupture',
    names: ['posterior-capsule-rupture', 'rupture-observed-expected', 'rupture-observed-expected-own'],
    caution:
      'A point outside the funnel or a signal of the chart is a reason to look at the notes, the case mix and the data, never a verdict on a person. The risk model is old; its odds ratios are partly from memory.',
  },
  {
    id: 'refraction',
    title: 'Refractive outcome',
    names: [
      'refraction-followed',
      'prediction-error-mean',
      'prediction-error-sd',
      'prediction-error-mean-absolute',
      'prediction-error-median-absolute',
      'within-0.25',
      'within-0.50',
      'within-0.75',
      'within-1.00',
    ],
    caution:
      'Eyes without a refraction after the operation are missing; those that come back differ from those that do not. The published figures come from other populations.',
  },
  {
    id: 'incisions',
    title: 'Induced astigmatism',
    names: [
      'induced-centroid',
      'induced-centroid-axis',
      'induced-mean-magnitude',
      'induced-sd',
      'induced-sd-x',
      'induced-sd-y',
      'flattening-mean',
      'torque-mean',
      'induced-p',
    ],
    caution:
      'Plan with the centroid, never with the mean magnitude; a single eye may differ by more than the effect itself.',
  },
  {
    id: 'acuity',
    title: 'Visual acuity',
    names: ['acuity-before-median', 'acuity-after-median', 'acuity-change-mean', 'acuity-loss'],
    caution: 'Counting fingers and hand motion have numbers only by a scheme; perception of light has none.',
  },
  {
    id: 'completeness',
    title: 'Completeness of the notes',
    names: ['completeness', 'element-recorded'],
    caution: 'Recorded is not the same as right: the checks look at what the elements say.',
  },
  {
    id: 'reviews',
    title: 'Reviews',
    names: ['reviews-overdue'],
    caution: 'A visit elsewhere, or one not yet written down, looks the same as no visit.',
  },
];

/** The figures of an audit in the chapters of its report, each in the order of the plan. */
export function chaptersOf(audit: Audit): readonly Chapter[] {
  return PLANS.map(({ names, ...plan }) => ({
    ...plan,
    figures: names.flatMap((name) => audit.figures.filter((figure) => figure.name === name)),
  }));
}

export const CAUTIONS: readonly string[] = [
  'These figures are aids for the people who know the department. They record and compute; they do not decide.',
  'Check a figure against the notes before acting on it; follow local policy and licensed practice.',
  'Many groups are looked at: about one comparison in twenty stands out by chance alone.',
  'Patients who were not seen again are missing from every outcome. Missing is shown beside each figure and is never counted as good.',
];

function some(count: number, one: string, many: string): readonly string[] {
  return count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];
}

/** What was counted and what was not, in sentences. */
export function setSentences({ set, asOf, suppressBelow }: Audit): readonly string[] {
  const counted = set.operations - set.notFinal - set.undated - set.repeatedIds;
  return [
    `${counted} final operations from ${set.from ?? 'no date'} to ${set.to ?? 'no date'}, ${set.followUps} follow-ups; audited as of ${asOf}.`,
    ...some(
      set.notFinal,
      'operation note is not final and is not counted.',
      'operation notes are not final and are not counted.',
    ),
    ...some(
      set.undated,
      'final operation has no date and is not counted.',
      'final operations have no date and are not counted.',
    ),
    ...some(
      set.repeatedIds,
      'operation is not counted because another note has its id.',
      'operations are not counted because another note has the same id.',
    ),
    ...some(
      set.later,
      'note is dated after the day of the audit and is not counted.',
      'notes are dated after the day of the audit and are not counted.',
    ),
    ...some(set.unjoined, 'follow-up names no operation of this set.', 'follow-ups name no operation of this set.'),
    ...some(
      set.misdated,
      'follow-up is left out: it has no date, or one before its operation.',
      'follow-ups are left out: they have no date, or one before their operation.',
    ),
    ...some(
      set.amendments,
      'amendment is not worked in: its note is counted as it was signed.',
      'amendments are not worked in: their notes are counted as they were signed.',
    ),
    ...some(
      set.unreadable,
      'note could not be read well enough to be counted.',
      'notes could not be read well enough to be counted.',
    ),
    suppressBelow < 2
      ? 'Small numbers are shown: this report is for the department itself.'
      : `Groups with fewer than ${suppressBelow} events or eyes are not shown, nor is a group from which such a number could be found by subtraction; no single note is named. For the department itself, with all of them: --suppress-below 0.`,
  ];
}

/** Distinct ways in which the figures of a chapter were made, numbered as the tables refer to them. */
export interface Making {
  readonly number: number;
  readonly method: string;
  readonly source: string;
  readonly cautions: readonly string[];
  readonly benchmarks: Figure['benchmarks'];
}

function makingKey({ method, source }: Figure): string {
  return JSON.stringify([method, source]);
}

export function makingsOf(figures: readonly Figure[]): {
  readonly list: readonly Making[];
  numberOf(figure: Figure): number;
} {
  const makings = new Map<string, Making>();
  for (const figure of figures) {
    const { method, source, cautions, benchmarks } = figure;
    const key = makingKey(figure);
    if (!makings.has(key)) makings.set(key, { number: makings.size + 1, method, source, cautions, benchmarks });
  }
  return { list: [...makings.values()], numberOf: (figure) => makings.get(makingKey(figure))?.number ?? 0 };
}
