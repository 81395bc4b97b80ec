import { operationCheck, type About } from '../check.ts';
import { has } from '../support/course.ts';
import { related } from '../support/place.ts';

export const generalAnaesthesiaWithoutAnaesthetist = operationCheck({
  id: 'general-anaesthesia-without-anaesthetist',
  group: 'sequence and consequence',
  summary: 'General anaesthesia was given, and the note says that there was no anaesthetist.',
  severity: 'error',
  allowable: true,
  run: ({ anaesthesia, team }, say) => {
    const general = has(anaesthesia?.kinds, 'general');
    const none = anaesthesia?.$.said['anaesthetist'];
    if (general === undefined || none?.word !== 'none') return;
    const member = team?.items.find(({ role }) => role?.value === 'anaesthetist')?.role;
    say({
      at: none,
      message: `Anaesthesia: it was ${general.text}, but the anaesthetist is given as “none”${member === undefined ? '' : ', while the team has one'}.`,
      related: [
        related(`the anaesthesia: ${general.text}`, general),
        ...(member === undefined ? [] : [related('the anaesthetist in the team', member)]),
      ],
    });
  },
});

export const aboutGeneralAnaesthesiaWithoutAnaesthetist: About = () => ({
  why: 'Nobody gives a general anaesthetic alone: the kind of anaesthesia or the person is wrong.',
  whatToDo: 'Write the staff reference of the anaesthetist, or correct the kind of anaesthesia.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (the anaesthetist is part of the record)',
  since: '1.0',
  faulty: { note: 'plan:\n  anaesthesia: [general]\nanaesthesia:\n  kinds: [general]' },
  sound: { note: 'plan:\n  anaesthesia: [general]\nanaesthesia:\n  kinds: [general]\n  anaesthetist: A-04' },
});
