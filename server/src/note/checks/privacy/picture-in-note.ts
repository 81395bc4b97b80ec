import type { About } from '../check.ts';
import { privacyCheck, takeItOut } from '../support/private-text.ts';

export const pictureInNote = privacyCheck({
  id: 'picture-in-note',
  what: 'a pasted picture or file',
  wording: {
    hints: ['base64', '==', 'aaaa', '////'],
    pattern: /data:[a-z]+\/[a-z0-9.+-]+;base64,|[A-Za-z0-9+/]{200,}={0,2}/gu,
  },

  summary: 'A picture or a file was pasted into the text.',
});

export const aboutPictureInNote: About = () => ({
  why: 'Full-face pictures name the person, print-outs carry the name in a corner, and the note can no longer be read.',
  whatToDo: takeItOut,
  source: '45 CFR 164.514(b)(2) (identifiers to be removed) (full-face images)',
  since: '1.0',
  faulty: { note: 'free-text: data:image/png;base64,iVBORw0KGgo' },
  sound: { note: 'free-text: picture in the archive' },
});
