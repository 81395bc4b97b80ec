import type { Operation, Place } from '@sideport/schemas';
import { complicationOf, has, type ComplicationKind } from './course.ts';

/** A fact of the capsule that is a complication, with the words by which complications name it. */
export interface TornFact {
  readonly field: Place;
  readonly fact: string;
  readonly kinds: readonly ComplicationKind[];
  /** The word by which the note says that it was so before. */
  readonly part: 'anterior capsule' | 'posterior capsule' | 'zonule' | 'vitreous';
}

/**
 * What the state of the capsule says went wrong in this operation. A capsule opened on purpose, an eye vitrectomised
 * before and what was so before the operation did not.
 */
export function tornFacts(note: Operation): TornFact[] {
  const before = note['capsule-state']?.before;
  return allFacts(note).filter(({ part }) => has(before, part) === undefined);
}

function allFacts(note: Operation): TornFact[] {
  const state = note['capsule-state'];
  const facts: TornFact[] = [];
  if (state?.posterior?.value === 'torn')
    facts.push({
      field: state.posterior,
      fact: 'the posterior capsule is recorded as torn',
      kinds: ['posterior capsule rupture'],
      part: 'posterior capsule',
    });
  if (state?.vitreous?.value === 'prolapsed')
    facts.push({
      field: state.vitreous,
      fact: 'vitreous is recorded as prolapsed',
      kinds: ['vitreous loss'],
      part: 'vitreous',
    });
  if (state?.zonule?.value === 'ruptured')
    facts.push({
      field: state.zonule,
      fact: 'the zonule is recorded as ruptured',
      kinds: ['zonular dialysis'],
      part: 'zonule',
    });
  if (
    state?.anterior !== undefined &&
    state.anterior.value !== 'intact' &&
    state.anterior.value !== 'cut on purpose' &&
    state.anterior.value !== 'absent'
  )
    facts.push({
      field: state.anterior,
      fact: 'the anterior capsule is recorded as torn',
      kinds: ['anterior capsule tear'],
      part: 'anterior capsule',
    });
  return facts;
}

/**
 * Whether a fact of the capsule is contradicted by the complications, which are recorded and do not have it: that is
 * remarked, and what would follow from the fact is not asked for as well.
 */
export function isContradicted(note: Operation, kind: ComplicationKind): boolean {
  const isRecorded = note.complications !== undefined || note.$.said['complications']?.word === 'none';
  return isRecorded && complicationOf(note, kind) === undefined;
}

/** A complication of the capsule, and what the state of the capsule would have to say. */
export function contraryState(note: Operation, kind: ComplicationKind) {
  const state = note['capsule-state'];
  const fields = {
    'posterior capsule rupture': state?.posterior?.value === 'intact' ? state.posterior : undefined,
    'anterior capsule tear': state?.anterior?.value === 'intact' ? state.anterior : undefined,
    'zonular dialysis': state?.zonule?.value === 'intact' ? state.zonule : undefined,
    'vitreous loss': state?.vitreous?.value === 'not prolapsed' ? state.vitreous : undefined,
  } as const;
  return kind in fields ? fields[kind as keyof typeof fields] : undefined;
}
