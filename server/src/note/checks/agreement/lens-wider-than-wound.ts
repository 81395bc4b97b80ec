import { operationCheck, type About } from '../check.ts';
import { mainIncision } from '../support/course.ts';
import { isPartlyUnread } from '../support/written.ts';
import { related } from '../support/place.ts';

export const lensWiderThanWound = operationCheck({
  id: 'lens-wider-than-wound',
  group: 'agreement',
  summary:
    'The lens is said to have gone through a wider wound than was made, or the wound to have been enlarged to less.',
  severity: 'warning',
  allowable: true,
  run: (note, say, { reading }) => {
    const main = mainIncision(note);
    const enlarged = main?.['enlarged-to'];
    const width = main?.width;
    if (width === undefined) return;
    if (enlarged !== undefined && enlarged.value.amount < width.value.amount) {
      say({
        at: enlarged,
        message: `Incision: ${width.text} cannot be enlarged to ${enlarged.text}.`,
        related: [related(`the width as made: ${width.text}`, width)],
      });
      return;
    }
    const through = note.lens?.['injected-through'];
    if (main !== undefined && isPartlyUnread(reading, ...main.$.path)) return;
    const widest = enlarged ?? width;
    if (through === undefined || through.value.amount <= widest.value.amount + 1e-9) return;
    say({
      at: through,
      message: `Lens: it is said to have gone through ${through.text}, but the main incision is ${widest.text} wide.`,
      related: [related(`the main incision: ${widest.text}`, widest)],
    });
  },
});

export const aboutLensWiderThanWound: About = () => ({
  why: 'The width at the end decides leakage and astigmatism.',
  whatToDo: 'Correct the width, or record to what the wound was enlarged.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { note: 'lens:\n  injected-through: 2.8 mm' },
  sound: { note: 'lens:\n  injected-through: 2.4 mm' },
});
