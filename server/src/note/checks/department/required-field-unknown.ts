import { replacing } from '../support/fixes.ts';
import { departmentCheck, type About } from '../check.ts';
import { nearestField, planOfField } from '../support/field-path.ts';

export const requiredFieldUnknown = departmentCheck({
  id: 'required-field-unknown',
  group: 'department file',
  summary: 'A field that is required in addition does not exist.',
  severity: 'error',
  allowable: false,
  run: (department, say, { reading }) => {
    for (const field of department['also-required']?.items ?? []) {
      if (planOfField(field.value) !== undefined) continue;
      const near = nearestField(field.value);
      say({
        at: field,
        fixes: near === undefined ? [] : [replacing(reading, field.span, near)],
        message: `Required fields: an operation has no field “${field.text}”.${near === undefined ? '' : ` Is ${near} meant?`}`,
      });
    }
  },
});

export const aboutRequiredFieldUnknown: About = () => ({
  why: 'It would be asked for in no note.',
  whatToDo: 'Write the field as its path from the top: preop.endothelial-count.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { base: 'department', note: 'also-required: [preop.endothelial-cont]' },
  sound: { base: 'department', note: 'also-required: [preop.endothelial-count]' },
});
