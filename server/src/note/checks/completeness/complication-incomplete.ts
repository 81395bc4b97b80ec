import { operationCheck, type About } from '../check.ts';
import { missingIn } from '../support/missing-fields.ts';
import { headOf } from '../support/place.ts';
import { listed } from '../support/words.ts';
import { isWritten } from '../support/written.ts';

export const complicationIncomplete = operationCheck({
  id: 'complication-incomplete',
  group: 'completeness',
  summary: 'A complication is listed without when it happened, what was done, or whether the patient was told.',
  severity: 'unfinished',
  allowable: true,
  run: ({ complications }, say, context) => {
    for (const complication of complications?.items ?? []) {
      const { what, action, account, $ } = complication;
      const silent =
        action === undefined &&
        account === undefined &&
        !['action', 'account'].some((key) => isWritten(context.reading, [...$.path, key]));
      const missing = [
        ...missingIn(
          complication,
          [
            ['what', 'what it was'],
            ['when', 'when it happened'],
          ] as const,
          context,
        ),
        ...(silent ? ['what happened or what was done'] : []),
        ...missingIn(complication, [['told', 'whether the patient was told']] as const, context),
      ];
      if (missing.length === 0) continue;
      say({
        at: what ?? headOf($, context),
        message: `Complications: for “${what?.value ?? 'this one'}” the note does not record ${listed(missing)}.`,
      });
    }
  },
});

export const aboutComplicationIncomplete: About = () => ({
  why: 'The account written the same day is the one that counts later, and the patient has a right to be told.',
  whatToDo: 'Add when, what happened or what was done, and whether the patient was told.',
  source:
    'RCS Good Surgical Practice 2014, 1.3 (problems and complications); duty to inform the patient, common practice',
  since: '1.0',
  faulty: {
    note: 'complications:\n  - what: iris prolapse\n    account: through the main wound, reposited\n    told: yes',
  },
  sound: {
    note: 'complications:\n  - what: iris prolapse\n    when: hydrodissection\n    account: through the main wound, reposited\n    told: yes',
  },
});
