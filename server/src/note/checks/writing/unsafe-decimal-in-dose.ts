import { textCheck, type About } from '../check.ts';
import { replacingPart } from '../support/fixes.ts';
import { walk } from '../support/values.ts';

const ANYWHERE = /\.0+\s?[mgµu]|(?<!\d)\.\d/u;
const TRAILING = /(?<![\d.])(\d+)\.0+\s?(mg|g|µg|mcg|micrograms?|mL|ml|units?)\b/u;
const LEADING = /(?<![\d.])\.(\d+)\s?(mg|g|µg|mcg|micrograms?|mL|ml|units?|%)/u;

export const unsafeDecimalInDose = textCheck({
  id: 'unsafe-decimal-in-dose',
  group: 'writing',
  summary: 'A dose is written with a trailing zero, or without a zero before the point.',
  severity: 'warning',
  allowable: true,
  run: (reading, say) => {
    // Most notes have no such number anywhere.
    if (!ANYWHERE.test(reading.text)) return;
    for (const { field, plan } of walk(reading).values) {
      const isDose = plan.notation.name === 'dose';
      if (!isDose && plan.guide.prose !== true) continue;
      const [trailing, leading] = [TRAILING.exec(field.text), LEADING.exec(field.text)];
      const match = trailing ?? leading;
      if (match === null) continue;
      const better = trailing === null ? `0${match[0]}` : match[0].replace(/\.0+/u, '');
      say({
        at: field,
        message: `Dose: “${match[0]}” is read ten times too large when the point is overlooked; write ${better}.`,
        fixes: isDose ? replacingPart(reading, field, { index: match.index, length: match[0].length }, better) : [],
      });
    }
  },
});

export const aboutUnsafeDecimalInDose: About = () => ({
  why: 'A dose of 1.0 mg is read as 10 mg and .5 mg as 5 mg when the point is overlooked.',
  whatToDo: 'Write 1 mg, and 0.5 mg.',
  source: 'Joint Commission “Do Not Use” list (trailing zero, lack of leading zero; from memory)',
  since: '1.0',
  faulty: {
    note: 'drugs:\n  - drug: cefuroxime\n    purpose: antibiotic\n    route: intracameral\n    dose: 1.0 mg in 0.1 mL',
  },
  sound: {
    note: 'drugs:\n  - drug: cefuroxime\n    purpose: antibiotic\n    route: intracameral\n    dose: 1 mg in 0.1 mL',
  },
});
