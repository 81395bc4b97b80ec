import { textCheck, type About } from '../check.ts';

/** Seven figures and more that are no date: a hospital or a health number. */
const LONG_RUN = /(?<!\d)(?!(?:19|20|21)\d{2}(?:0[1-9]|1[0-2])(?:0[1-9]|[12]\d|3[01])(?!\d))\d{7,}/u;
const TITLED = /(?:^|[^a-z])(?:mr|mrs|ms|miss|dr|prof)[ ._-]+[a-z]{2,}/iu;
const MAILBOX = /[\w.+-]+@[\w-]+\.[\w.-]+/u;

export const identifyingFileName = textCheck({
  id: 'identifying-file-name',
  group: 'privacy',
  summary: 'The name of the file names a person, or holds a long number.',
  severity: 'error',
  allowable: true,
  run: (reading, say, { file }) => {
    if (file === null) return;
    const name = file.slice(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
    const what = TITLED.test(name)
      ? 'a person'
      : MAILBOX.test(name)
        ? 'a mail address'
        : LONG_RUN.test(name)
          ? 'a long number'
          : undefined;
    if (what === undefined) return;
    const first = reading.tree.root?.kind === 'map' ? reading.tree.root.entries[0] : undefined;
    if (first === undefined) return;
    say({
      at: first.keySpan,
      message: `Privacy: the name of this file ${what === 'a person' ? 'names' : 'holds'} ${what}. Call it by the id of the note.`,
    });
  },
});

export const aboutIdentifyingFileName: About = () => ({
  why: 'File names appear in listings, logs and messages where nobody expects a name.',
  whatToDo: 'Call the file by the id of the note. The old name stays in the history: tell whoever keeps it.',
  source: '45 CFR 164.514(b)(2) (identifiers to be removed)',
  since: '1.0',
  faulty: { note: 'urgency: elective', file: 'Mrs_Elm_4471902.opnote.yaml' },
  sound: { note: 'urgency: elective', file: 'OP-2031-0102.opnote.yaml' },
});
