import { operationCheck, type About } from '../check.ts';
import { composeNote } from '../examples/compose.ts';
import { tornCapsule } from '../examples/scenarios.ts';
import { listedLens } from '../support/department-lens.ts';
import { inDepartment } from '../support/place.ts';
import { listed } from '../support/words.ts';

export const placementNotForLens = operationCheck({
  id: 'placement-not-for-lens',
  group: 'agreement',
  summary: 'The lens was placed where the department’s list does not allow it.',
  severity: 'warning',
  allowable: true,
  run: (note, say, context) => {
    const { department } = context;
    const placed = note.lens?.placed;
    const places = listedLens(department, note.lens)?.placements;
    if (placed === undefined || placed.value === 'none' || places === undefined || places.items.length === 0) return;
    if (places.items.some(({ value }) => value === placed.value)) return;
    const allowed = listed(
      places.items.map(({ value }) => value),
      'or',
    );
    say({
      at: placed,
      message: `Lens: ${note.lens?.model?.text ?? 'it'} was placed in “${placed.value}”, but is listed for ${allowed} only.`,
      related: inDepartment(`the list: ${allowed}`, places.$, context),
    });
  },
});

export const aboutPlacementNotForLens: About = () => ({
  why: 'A one-piece lens in the sulcus chafes the iris; a lens for the bag may not hold elsewhere.',
  whatToDo: 'Compare model and place. If it was deliberate, allow the remark with the reason.',
  source:
    'Chang et al., J Cataract Refract Surg 2009;35:1445-58 (backup lens; from memory); placements as the department lists them',
  since: '1.0',
  faulty: { note: composeNote(tornCapsule, 'lens:\n  placed: scleral fixation'), files: { 'sideport.yaml': '' } },
  sound: { note: tornCapsule, files: { 'sideport.yaml': '' } },
});
