import { textCheck, type About } from '../check.ts';
import { walk } from '../support/values.ts';

const PLACEHOLDER =
  /\?\?+|\b(?:tbc|tba|tbd|todo|fixme|xx+)\b|_{3,}|\.{4,}|\[\s*\]|<[a-z][^<>@]{1,40}>|\bto be (?:confirmed|added|completed|filled in)\b|\b(?:insert|enter|type) (?:text|here|name|value)\b|lorem ipsum|\*\*\*/iu;

export const placeholderLeft = textCheck({
  id: 'placeholder-left',
  group: 'writing',
  summary: 'A placeholder was left in the note.',
  severity: 'unfinished',
  allowable: true,
  run: (reading, say) => {
    for (const { field, plan } of walk(reading).values) {
      if (plan.guide.prose !== true && plan.notation.name !== 'identifier') continue;
      const match = PLACEHOLDER.exec(field.text);
      if (match === null) continue;
      say({
        at: field,
        message: `${plan.guide.label}: “${match[0]}” is a placeholder. Write what belongs there, or “not recorded”.`,
      });
    }
  },
});

export const aboutPlaceholderLeft: About = () => ({
  why: 'It looks filled in, and says nothing.',
  whatToDo: 'Write what belongs there, or “not recorded”.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { note: 'findings: TBC' },
  sound: { note: 'findings: dense nucleus, clean capsule' },
});
