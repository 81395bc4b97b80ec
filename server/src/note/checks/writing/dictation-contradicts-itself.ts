import { operationCheck, type About } from '../check.ts';
import { pathInWords } from '../support/path-in-words.ts';
import { related } from '../support/place.ts';

export const dictationContradictsItself = operationCheck({
  id: 'dictation-contradicts-itself',
  group: 'writing',
  summary: 'The dictation gives a field two values, and the note does not say which.',
  severity: 'warning',
  allowable: true,
  run: (_, say, { reading, dictation }) => {
    const said = dictation?.in(reading);
    if (said === undefined) return;
    for (const { path, because, inNote, candidates } of said.result.conflicts) {
      const [first, ...others] = candidates;
      if (inNote !== undefined || first === undefined || others.length === 0) continue;
      say({
        at: said.kept.spanOf(first),
        message: `${pathInWords(path)}: ${because}. Write the right one into its field.`,
        related: others.map((other) => related(`“${other.text}”`, said.kept.spanOf(other))),
      });
    }
  },
});

export const aboutDictationContradictsItself: About = () => ({
  why: 'Two values without a word of correction between them: only the surgeon knows which was meant, and only soon after.',
  whatToDo: 'Write the right value into the field. The dictation stays as it was spoken.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: {
    note: 'dictation: Right eye. Endothelial count two thousand four hundred. Endothelial count two thousand three hundred.',
  },
  sound: {
    note: 'dictation: Right eye. Endothelial count two thousand four hundred, correction, two thousand three hundred.',
  },
});
