import { operationCheck, type About } from '../check.ts';
import { fieldIn, planOfField, stepsOf } from '../support/field-path.ts';
import { inDepartment, placeOfMissing } from '../support/place.ts';
import { small } from '../support/words.ts';
import { isWritten } from '../support/written.ts';

const files = { 'sideport.yaml': 'also-required: [preop.endothelial-count]' };

export const requiredFieldMissing = operationCheck({
  id: 'required-field-missing',
  group: 'completeness',
  summary: 'A field that the department asks for in addition is missing.',
  severity: 'unfinished',
  allowable: true,
  run: (note, say, context) => {
    if (context.status === 'planned') return;
    for (const required of context.department?.['also-required']?.items ?? []) {
      const plan = planOfField(required.value);
      if (
        plan === undefined ||
        fieldIn(note, required.value) !== undefined ||
        isWritten(context.reading, stepsOf(required.value))
      )
        continue;
      say({
        at: placeOfMissing(context),
        message: `The note does not record the ${small(plan.guide.label)} (${required.text}), which this department asks for.`,
        related: inDepartment('the required fields', required, context),
      });
    }
  },
});

export const aboutRequiredFieldMissing: About = () => ({
  why: 'The department agreed to record it in every note.',
  whatToDo: 'Fill it in, or write “not recorded”.',
  source: 'the department’s own list of required fields',
  since: '1.0',
  faulty: { note: 'urgency: elective', files },
  sound: { note: 'preop:\n  endothelial-count: 2400 /mm²', files },
});
