import { operationCheck, type About } from '../check.ts';
import { askedForBy, cms, jointCommission, nationalAudit, rcs } from '../support/completeness.ts';
import { missingIn } from '../support/missing-fields.ts';
import { headOf, placeOfMissing } from '../support/place.ts';
import { listed } from '../support/words.ts';
import { isWritten } from '../support/written.ts';

const asked = () => askedForBy([{ by: [rcs, cms, jointCommission] }]);
const ofSurgeons = [
  ['ref', 'the reference'],
  ['grade', 'the grade'],
] as const;
const ofOthers = [['ref', 'the reference']] as const;

export const teamIncomplete = operationCheck({
  id: 'team-incomplete',
  group: 'completeness',
  summary: 'The surgeon is not named, or somebody of the team has no reference or the surgeon no grade.',
  severity: 'unfinished',
  allowable: true,
  run: ({ team }, say, context) => {
    if (context.status === 'planned') return;
    const members = team?.items ?? [];
    if (!members.some(({ role }) => role?.value === 'surgeon')) {
      // A role that could not be read may be that of the surgeon.
      if (
        members.some(({ role }) => role === undefined) ||
        (team === undefined && isWritten(context.reading, ['team']))
      )
        return;
      say({
        at: team === undefined ? placeOfMissing(context) : headOf(team.$, context),
        message: `Team: the note does not name the surgeon. ${asked()}`,
      });
      return;
    }
    for (const member of members) {
      const operates = ['surgeon', 'supervisor', 'assistant'].includes(member.role?.value ?? '');
      const missing = operates ? missingIn(member, ofSurgeons, context) : missingIn(member, ofOthers, context);
      if (missing.length === 0) continue;
      say({
        at: headOf(member.$, context),
        message: `Team: ${listed(missing)} of the ${member.role?.value ?? 'person'} ${missing.length === 1 ? 'is' : 'are'} missing. ${asked()}`,
      });
    }
  },
});

export const aboutTeamIncomplete: About = () => ({
  why: 'Who did what is asked by every rule, and the grade of the surgeon belongs to every risk model.',
  whatToDo: 'Write role, reference and, for surgeons, the grade of everybody in the team.',
  source: `${rcs} (names of the operating surgeon and assistants); ${cms}; ${jointCommission}; ${nationalAudit} (grade)`,
  since: '1.0',
  faulty: { note: 'team:\n  - role: scrub nurse\n    ref: N-11\n    grade: nurse' },
  sound: { note: 'team:\n  - role: surgeon\n    ref: S-02\n    grade: consultant' },
});
