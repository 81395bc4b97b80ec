import { operationCheck, type About } from '../check.ts';

/** Longer stretches are cut in the message: the mark shows where they stand. */
const SHOWN = 60;

export const dictatedWordsInNoField = operationCheck({
  id: 'dictated-words-in-no-field',
  group: 'writing',
  summary: 'Words of the dictation went into no field.',
  severity: 'info',
  allowable: true,
  run: (_, say, { reading, dictation }) => {
    const said = dictation?.in(reading);
    if (said === undefined) return;
    const { unmatched } = said.result;
    unmatched.forEach((stretch, at) => {
      const words = stretch.text.replace(/\s+/gu, ' ');
      const shown = words.length > SHOWN ? `${words.slice(0, SHOWN - 1)}…` : words;
      say({
        at: said.kept.spanOf(stretch),
        message: `“${shown}” was dictated and is in no field (place ${at + 1} of ${unmatched.length}). Write it where it belongs, or leave it in the dictation.`,
      });
    });
  },
});

export const aboutDictatedWordsInNoField: About = () => ({
  why: 'What was said and not understood must not disappear silently: it may be the one thing that matters later.',
  whatToDo: 'Write what it says into the field it belongs to. If no field can say it, leave it in the dictation.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { note: 'dictation: Right eye. The patient hummed throughout.' },
  sound: { note: 'dictation: Right eye. Topical anaesthesia.' },
});
