import { operationCheck, type About } from '../check.ts';
import { certainEye } from '../support/sides.ts';

const words: Readonly<Record<string, 'right' | 'left'>> = {
  right: 'right',
  od: 'right',
  left: 'left',
  os: 'left',
};

/** “cortex-left-behind”, “aphakia-left”: no side. */
function isVerb(part: string, next: string | undefined): boolean {
  return part === 'left' && ['behind', 'in', 'over', 'aphakic', 'without', 'open'].includes(next ?? '');
}

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
    const parts = name.toLowerCase().split(/[^a-z]+/u);
    const sides = parts.filter((part, at) => words[part] !== undefined && !isVerb(part, parts[at + 1]));
    const word = sides.find((part) => words[part] !== eye);
    // A name that has both sides names neither.
    if (word === undefined || sides.some((part) => words[part] === eye)) return;
    const named = words[word];
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
