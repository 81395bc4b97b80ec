import { operationCheck, type About } from '../check.ts';
import { lengthOf } from '../support/measurements.ts';
import { related } from '../support/place.ts';
import { rounded } from '../support/words.ts';

const SCREENING_LIMIT = 0.3;

export const eyesDifferInLength = operationCheck({
  id: 'eyes-differ-in-length',
  group: 'agreement',
  summary: 'The two eyes differ in length by more than the screening limit.',
  severity: 'warning',
  allowable: true,
  run: (note, say, { department }) => {
    const [length, fellow] = [lengthOf(note), note.preop?.['fellow-eye']?.['axial-length']];
    if (length === undefined || fellow === undefined) return;
    const limit = department?.thresholds?.['lens-length-difference']?.value.amount ?? SCREENING_LIMIT;
    const difference = Math.abs(length.value.amount - fellow.value.amount);
    if (difference <= limit + 1e-9) return;
    say({
      at: length,
      message: `Biometry: this eye is ${length.text}, the other ${fellow.text}: ${rounded(difference, 2)} mm apart (more than ${limit} mm). Measure again, or say why.`,
      related: [related(`the other eye: ${fellow.text}`, fellow)],
    });
  },
});

export const aboutEyesDifferInLength: About = () => ({
  why: 'A wrong length is the commonest cause of a refractive surprise; a difference between the eyes is where it shows.',
  whatToDo:
    'Measure again, or find the reason: a staphyloma, an operated or an injured eye. Then allow the remark with that reason.',
  source: 'Holladay et al., J Cataract Refract Surg 1988;14:17-24 (data screening; from memory): more than 0.3 mm',
  since: '1.0',
  faulty: { note: 'preop:\n  fellow-eye:\n    axial-length: 24.41 mm' },
  sound: { note: 'preop:\n  fellow-eye:\n    axial-length: 23.41 mm' },
});
