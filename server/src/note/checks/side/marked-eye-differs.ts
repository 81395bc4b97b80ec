import type { About } from '../check.ts';
import { findTheSide, sideCheck } from '../support/sides.ts';

export const markedEyeDiffers = sideCheck({
  id: 'marked-eye-differs',
  what: 'the mark on the patient',
  summary: 'The mark on the patient was on the other side.',
});

export const aboutMarkedEyeDiffers: About = () => ({
  why: 'The mark is what the team looks at before the first incision.',
  whatToDo: findTheSide,
  source: 'WHO Surgical Safety Checklist 2009',
  since: '1.0',
  faulty: { note: 'safety:\n  site-marked: left' },
  sound: { note: 'safety:\n  site-marked: right' },
});
