import type { FollowUp, Place } from '@sideport/schemas';
import { followUpCheck, type About } from '../check.ts';
import { has, type ComplicationKind } from '../support/course.ts';
import { related } from '../support/place.ts';

interface Finding {
  readonly field: Place;
  readonly fact: string;
  readonly kind: ComplicationKind;
}

export const visitFindingNotListed = followUpCheck({
  id: 'visit-finding-not-listed',
  group: 'agreement',
  summary: 'A visit records a finding that is a complication, and says that there was none.',
  severity: 'warning',
  allowable: true,
  run: (note, say, { operation }) => {
    const none = note.$.said['complications'];
    if (none?.word !== 'none') return;
    const before = operation?.preop?.fundus?.periphery?.items.map(({ value }) => value) ?? [];
    for (const { field, fact, kind } of findingsOf(note)) {
      if (kind === 'retinal tear' && before.includes('retinal tear')) continue;
      if (kind === 'retinal detachment' && before.includes('detached')) continue;
      say({
        at: field,
        message: `Visit: ${fact}, but the complications are given as “none”. List “${kind}”, or correct the finding.`,
        related: [related('complications: none', none)],
      });
    }
  },
});

function findingsOf({ wound, fundus }: FollowUp): Finding[] {
  const findings: Finding[] = [];
  if (wound?.value === 'leak') findings.push({ field: wound, fact: 'the wound leaks', kind: 'wound leak' });
  const tear = has(fundus?.periphery, 'retinal tear');
  if (tear !== undefined) findings.push({ field: tear, fact: 'the retina has a tear', kind: 'retinal tear' });
  const detached = has(fundus?.periphery, 'detached');
  if (detached !== undefined)
    findings.push({ field: detached, fact: 'the retina is detached', kind: 'retinal detachment' });
  return findings;
}

export const aboutVisitFindingNotListed: About = () => ({
  why: 'Registers and audits count the list of complications: a detachment that stands only among the findings is never counted, and an early one is a complication of the operation until shown otherwise.',
  whatToDo: 'List it among the complications of the visit, or allow the remark and say why it is none.',
  source: 'ICHOM Cataracts Data Collection (complications after surgery)',
  since: '1.0',
  faulty: { base: 'follow-up', note: 'fundus:\n  periphery: [retinal tear]' },
  sound: {
    base: 'follow-up',
    note: 'fundus:\n  periphery: [retinal tear]\ncomplications:\n  - what: retinal tear\n    found: 2031-05-06\n    action: laser the same day',
  },
});
