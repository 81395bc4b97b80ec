import type { Operation } from '@sideport/schemas';
import type { Fact } from '../document.ts';
import { and, capital, join, longDate } from '../english.ts';
import type { Tidy } from '../passage.ts';

/** The head of the note as labelled facts; what is missing is said, because a note without it names nobody. */
export function headFacts(note: Operation, tidy: Tidy): readonly Fact[] {
  const { patient, team } = note;
  const said = (key: string): string => note.$.said[key]?.word ?? 'not recorded';
  const times = join([note.start && `from ${tidy(note.start)}`, note.finish && `to ${tidy(note.finish)}`]);
  const day = join([note.date && longDate(note.date.value), times], ', ');
  return [
    { label: 'Patient', text: patientWords(patient, tidy) },
    {
      label: 'Eye',
      text: join([note.eye?.value ?? said('eye'), whichEye(note)]),
    },
    {
      label: 'Operation',
      text: join([tidy(note.procedure) ?? said('procedure'), note.urgency && `(${note.urgency.value})`]),
    },
    { label: note.status?.value === 'planned' ? 'Planned for' : 'Date', text: day || 'not recorded' },
    { label: 'Place', text: tidy(note.place) ?? said('place') },
    ...(team?.items ?? []).map((member) => ({
      label: capital(member.role?.value ?? 'team member'),
      text: join([
        tidy(member.ref) ?? 'not recorded',
        member.grade && `(${member.grade.value})`,
        member.tasks && member.tasks.items.length > 0 && `for ${and(member.tasks.items.map((task) => tidy(task)))}`,
      ]),
    })),
    ...(team ? [] : [{ label: 'Team', text: said('team') }]),
    { label: 'Note', text: tidy(note.id) ?? 'no id recorded' },
  ];
}

/** `P-3107, born 1979, male`. */
export function patientWords(patient: Operation['patient'], tidy: Tidy): string {
  const sex = patient?.sex?.value === 'other' ? 'sex: other' : tidy(patient?.sex);
  return join([tidy(patient?.ref), patient?.born && `born ${tidy(patient.born)}`, sex], ', ') || 'not recorded';
}

/** An eye has been operated only when the note is final. */
function whichEye(note: Operation): string | undefined {
  const order = note['which-eye']?.value;
  if (order === undefined) return undefined;
  const state = { planned: ' to be operated', draft: '', final: ' operated' }[note.status?.value ?? 'draft'];
  return `(${order} eye${state})`;
}
