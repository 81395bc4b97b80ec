import type { About } from '../check.ts';
import { cms, completenessCheck, nationalAudit, rcs, sourcesOf, type Wanted } from '../support/completeness.ts';
import { removesLens } from '../support/course.ts';

const wanted: readonly Wanted[] = [
  { path: 'capsule-state.anterior', by: [rcs, cms], grade: 'warning', name: 'the anterior capsule' },
  { path: 'capsule-state.posterior', by: [nationalAudit, rcs, cms], name: 'the posterior capsule' },
  { path: 'capsule-state.zonule', by: [nationalAudit], name: 'the zonule' },
  { path: 'capsule-state.vitreous', by: [nationalAudit], name: 'the vitreous' },
];

export const capsuleStateIncomplete = completenessCheck({
  id: 'capsule-state-incomplete',
  section: 'capsule-state',
  title: 'State of the capsule',
  summary: 'The state of anterior capsule, posterior capsule, zonule or vitreous is missing.',
  due: removesLens,
  wanted,
});

export const aboutCapsuleStateIncomplete: About = () => ({
  why: 'The audit of capsule rupture is computed from these facts; a gap counts neither as torn nor as intact.',
  whatToDo: 'Write all four, as seen at the end of lens removal.',
  source: sourcesOf(wanted),
  since: '1.0',
  faulty: { note: 'without: capsule-state.posterior' },
  sound: { note: 'capsule-state:\n  posterior: intact' },
});
