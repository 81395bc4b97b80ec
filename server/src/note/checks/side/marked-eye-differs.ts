import { sideCheck } from '../support/sides.ts';

export const markedEyeDiffers = sideCheck({
  id: 'marked-eye-differs',
  what: 'the mark on the patient',
  summary: 'The mark on the patient was on the other side.',
  why: 'The mark is what the team looks at before the first incision.',
  source: 'WHO Surgical Safety Checklist 2009',
  faulty: { note: 'safety:\n  site-marked: left' },
  sound: { note: 'safety:\n  site-marked: right' },
});
