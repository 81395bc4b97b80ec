import type { About } from '../check.ts';
import { privacyCheck, takeItOut } from '../support/private-text.ts';

export const homeFolderInNote = privacyCheck({
  id: 'home-folder-in-note',
  what: 'a folder that names its owner',
  wording: { hints: ['/home/', '/users/', '\\users'], pattern: /(?:\/home\/|\/Users\/|[A-Z]:\\Users\\)[^\s/\\]+/gu },

  summary: 'The text holds the path of a personal folder.',
});

export const aboutHomeFolderInNote: About = () => ({
  why: 'The folder is called after a person, and the file is not part of the record.',
  whatToDo: takeItOut,
  source: 'common practice, no source',
  since: '1.0',
  faulty: { note: 'free-text: print-out in /home/jelm/biometry' },
  sound: { note: 'free-text: print-out in the paper notes' },
});
