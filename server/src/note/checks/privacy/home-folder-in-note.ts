import { privacyCheck } from '../support/private-text.ts';

export const homeFolderInNote = privacyCheck({
  id: 'home-folder-in-note',
  what: 'a folder that names its owner',
  pattern: /(?:\/home\/|\/Users\/|[A-Z]:\\Users\\)[^\s/\\]+/gu,

  summary: 'The text holds the path of a personal folder.',
  why: 'The folder is called after a person, and the file is not part of the record.',
  source: 'common practice, no source',
  faulty: { note: 'free-text: print-out in /home/jelm/biometry' },
  sound: { note: 'free-text: print-out in the paper notes' },
});
