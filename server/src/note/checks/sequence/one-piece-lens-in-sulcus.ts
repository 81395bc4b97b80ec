import { operationCheck, type About } from '../check.ts';
import { composeNote } from '../examples/compose.ts';
import { tornCapsule } from '../examples/scenarios.ts';
import { listedLens } from '../support/department-lens.ts';
import { related } from '../support/place.ts';

export const onePieceLensInSulcus = operationCheck({
  id: 'one-piece-lens-in-sulcus',
  group: 'sequence and consequence',
  summary: 'A one-piece acrylic lens lies in the sulcus.',
  severity: 'warning',
  allowable: true,
  run: ({ lens }, say, { department }) => {
    const placed = lens?.placed;
    const pieces = lens?.pieces;
    if (placed?.value !== 'sulcus' || pieces?.value !== 1) return;
    if (lens?.material !== undefined && !lens.material.value.endsWith('acrylic')) return;
    // The department's list says it more plainly when it has the lens: then another check speaks.
    const listed = listedLens(department, lens);
    if (listed?.pieces !== undefined && listed.pieces.value !== 1) return;
    if (listed?.placements !== undefined && !listed.placements.items.some(({ value }) => value === 'sulcus')) return;
    say({
      at: placed,
      message: 'Lens: a one-piece acrylic lens lies in the sulcus, where its edge chafes the iris. Is it so?',
      related: [related('pieces: 1', pieces)],
    });
  },
});

export const aboutOnePieceLensInSulcus: About = () => ({
  why: 'Its thick square edge chafes the iris: pigment, bleeding and pressure follow.',
  whatToDo: 'Correct pieces or placement. If it is so, say why and plan the pressure.',
  source: 'Chang et al., J Cataract Refract Surg 2009;35:1445-58 (from memory)',
  since: '1.0',
  faulty: { note: composeNote(tornCapsule, 'lens:\n  pieces: 1') },
  sound: { note: tornCapsule },
});
