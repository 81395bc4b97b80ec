import type { Operation } from '@sideport/schemas';

const OUTCOMES: Readonly<Record<string, string>> = {
  incomplete: 'not complete',
  'extended to the periphery': 'run out to the periphery',
  'radial tear': 'torn radially',
  'converted to can-opener': 'converted to can-opener',
};
const TECHNIQUES: Readonly<Record<string, string>> = { 'can-opener': 'can-opener', envelope: 'envelope' };
const STATES: Readonly<Record<string, string>> = {
  'torn, contained': 'anterior capsule torn',
  'torn, uncontained': 'anterior capsule torn',
  'cut on purpose': 'anterior capsule cut',
};

/** Why no unbroken rim surrounds the opening of the capsule, so that a circle does not describe it; else undefined. */
export function brokenRim({ capsulotomy, 'capsule-state': state }: Operation): string | undefined {
  return (
    OUTCOMES[capsulotomy?.outcome?.value ?? ''] ??
    TECHNIQUES[capsulotomy?.technique?.value ?? ''] ??
    STATES[state?.anterior?.value ?? '']
  );
}
