import { operationCheck, type About } from '../check.ts';
import { has, removesLens } from '../support/course.ts';
import { related } from '../support/place.ts';
import { planWithout } from '../support/precaution.ts';

export const alphaBlockerWithoutPrecaution = operationCheck({
  id: 'alpha-blocker-without-precaution',
  group: 'sequence and consequence',
  summary: 'An alpha-blocker was ever taken, and nothing is planned for a floppy iris.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    const blocker = note.patient?.['alpha-blocker'];
    if (blocker === undefined || blocker.value === 'never' || !removesLens(note)) return;
    if (has(note.difficulty, 'floppy iris') !== undefined && note['pupil-aid'] !== undefined) return;
    const place = planWithout(note, 'floppy iris', 'small pupil');
    if (place === undefined) return;
    say({
      at: place,
      message: `Plan: an alpha-blocker is recorded (${blocker.value}), but nothing is planned for a floppy iris.`,
      related: [related(`alpha-blocker: ${blocker.value}`, blocker)],
    });
  },
});

export const aboutAlphaBlockerWithoutPrecaution: About = () => ({
  why: 'The iris billows and prolapses even years after the drug was stopped; the capsule is torn more often.',
  whatToDo: 'List “floppy iris” or “small pupil” among the precautions, or write “none needed”.',
  source: 'Narendran et al., Eye 2009;23:31-7 (doxazosin as risk factor); floppy iris syndrome: literature from memory',
  since: '1.0',
  faulty: { note: 'patient:\n  alpha-blocker: in the past\nplan:\n  precautions: [capsule dye]\ndye: trypan blue' },
  sound: { note: 'patient:\n  alpha-blocker: in the past\nplan:\n  precautions: [floppy iris]' },
});
