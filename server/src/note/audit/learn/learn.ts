import { joinCases } from '../cases.ts';
import { surgeonOf } from '../group.ts';
import type { AuditPartial } from '../partial.ts';
import { proposeConstants, type PresentConstants, type ProposedConstant, type SetAside } from './constants.ts';
import { proposeEffects, type PresentEffect, type ProposedEffect } from './incision-effects.ts';

/** What the department file says now, as far as it can be learnt. */
export interface PresentDepartment {
  readonly effects: readonly PresentEffect[];
  readonly constants: PresentConstants;
}

export interface Learned {
  readonly version: 1;
  readonly effects: readonly ProposedEffect[];
  readonly constants: readonly ProposedConstant[];
  readonly setAside: readonly SetAside[];
  readonly cautions: readonly string[];
}

const CAUTIONS = [
  'Proposals only: nothing is written. A person who answers for it decides, and writes the department file.',
  'They rest on the eyes that came back. Look at the audit first: a wrong constant, a wrong lens or a new device in the period makes an average of two things.',
  'Lens constants are the responsibility of the user; check planned powers against the biometry print-out.',
];

/** Proposes what the department file could say, from what this set of notes shows. */
export function learn(partial: AuditPartial, present: PresentDepartment): Learned {
  const { cases } = joinCases(partial);
  const { proposals, setAside } = proposeConstants(cases, present.constants);
  return {
    version: 1,
    effects: proposeEffects(cases, surgeonOf, present.effects),
    constants: proposals,
    setAside,
    cautions: CAUTIONS,
  };
}
