import { operationCheck, type About } from '../check.ts';
import { certainEye } from '../support/sides.ts';

const words: Readonly<Record<string, 'right' | 'left'>> = {
  right: 'right',
  od: 'right',
  left: 'left',
  os: 'left',
};

export const fileNameNamesOtherEye = operationCheck({
  id: 'file-name-names-other-eye',
  group: 'side and identity',
  summary: 'The name of the file names the other eye.',
  severity: 'error',
  allowable: false,
  run: (note, say, { file }) => {
    const eye = certainEye(note);
    if (eye === undefined || note.eye === undefined || file === null) return;
    const name = file.slice(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
    const word = name
      .toLowerCase()
      .split(/[^a-z]+/u)
      .find((part) => words[part] !== undefined);
    const named = word === undefined ? undefined : words[word];
    if (named === undefined || named === eye) return;
    say({
      at: note.eye,
      message: `Side: this note is about the ${eye} eye, but the name of its file says ${named} (“${word}”).`,
    });
  },
});

export const aboutFileNameNamesOtherEye: About = () => ({
  why: 'Files are found and attached by their names; the note of one eye under the name of the other is a trap.',
  whatToDo: 'Find out which side is right. Then rename the file or correct the note.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { note: 'eye: right', file: 'OP-2031-0102-left.opnote.yaml' },
  sound: { note: 'eye: right', file: 'OP-2031-0102-right.opnote.yaml' },
});
