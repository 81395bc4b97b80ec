import { textCheck, type About } from '../check.ts';
import { walk } from '../support/values.ts';

export const numberInQuotes = textCheck({
  id: 'number-in-quotes',
  group: 'writing',
  summary: 'A number is written in quotes.',
  severity: 'info',
  allowable: true,
  run: (reading, say) => {
    for (const { field, plan, style } of walk(reading).values) {
      if ((style !== 'single' && style !== 'double') || !plan.notation.bareNumber) continue;
      if (plan.notation.name === 'identifier' || plan.guide.prose === true || !/^[+-]?\d+(?:\.\d+)?$/u.test(field.text))
        continue;
      say({
        at: field,
        message: `${plan.guide.label}: ${field.text} is written in quotes, so that other programs take it for a text.`,
        fixes: [{ title: 'Delete the quotes', safety: 'safe', edits: [{ span: field.span, text: field.text }] }],
      });
    }
  },
});

export const aboutNumberInQuotes: About = () => ({
  why: 'Here it is understood, but another program that reads the note takes it for a text.',
  whatToDo: 'Delete the quotes. Identifiers keep theirs.',
  source: 'YAML 1.2, core schema',
  since: '1.0',
  faulty: { note: 'preop:\n  biometry:\n    index: "1.3375"' },
  sound: { note: 'preop:\n  biometry:\n    index: 1.3375' },
});
