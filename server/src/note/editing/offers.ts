import { fieldsBelow, recordPlan, type Department, type Operation, type Path } from '@sideport/schemas';
import { knownChecks } from '../checks/known-checks.ts';
import { reviewsOfSchedule, suggestedCodes } from './offers-course.ts';
import type { Around } from './around.ts';
import { once, type Offer } from './offer.ts';
import { namesStaff } from './mentions.ts';
import { lensOffers } from './offers-lens.ts';

/** What is already known elsewhere for a field: in the plan, the department file, the set. Best first. */
export function offersFor(path: Path, around: Around): readonly Offer[] {
  const { reading, surroundings } = around;
  const note = reading.kind === 'operation' ? reading.note : undefined;
  const department = surroundings.department ?? null;
  const where = path.filter((step) => typeof step === 'string').join('.');
  return once([
    ...lensOffers(path, note, department),
    ...planned(where, note),
    ...staff(where, note, department),
    ...usualSettings(where, note, department),
    ...notesOfTheSet(where, around),
    ...reviewsOfSchedule(path, where, note, department),
    ...suggestedCodes(path, where, note),
    ...dates(where, surroundings.today ?? null),
    ...(reading.kind === 'department' ? formatNames(where) : []),
  ]);
}

/** What the plan says of a field that is recorded later. */
function planned(where: string, note: Operation | undefined): readonly Offer[] {
  const plan = note?.plan;
  const text = {
    seat: plan?.seat?.text,
    'incisions.at': plan?.incision?.at?.text,
    'incisions.width': plan?.incision?.width?.text,
    'plan.predicted-by': plan?.formula?.items[0]?.text,
  }[where];
  if (text === undefined) return [];
  return [{ text, from: where.startsWith('plan.') ? 'formula of the plan' : 'as planned' }];
}

function staff(where: string, note: Operation | undefined, department: Department | null): readonly Offer[] {
  if (!namesStaff(where)) return [];
  const listed = (department?.staff?.items ?? []).map((person) => ({
    text: person.ref?.text ?? '',
    from: [person.role?.text, person.grade?.text].filter((part) => part !== undefined).join(', '),
  }));
  const present = (note?.team?.items ?? []).map((person) => ({
    text: person.ref?.text ?? '',
    from: `${person.role?.text ?? 'member'} of this team`,
  }));
  return where === 'team.ref' ? listed : [...present, ...listed];
}

const SETTINGS = ['bottle-height', 'set-pressure', 'vacuum', 'flow'] as const;

function usualSettings(where: string, note: Operation | undefined, department: Department | null): readonly Offer[] {
  const setting = SETTINGS.find((name) => where === `nucleus.steps.${name}` || where === `cortex.${name}`);
  const surgeon = note?.team?.items.find((person) => person.role?.value === 'surgeon')?.ref?.value;
  const person = department?.staff?.items.find((each) => each.ref?.value === surgeon);
  const text = setting === undefined || surgeon === undefined ? undefined : person?.settings?.[setting]?.text;
  return text === undefined ? [] : [{ text, from: `usual setting of ${surgeon}` }];
}

function notesOfTheSet(where: string, { reading, surroundings }: Around): readonly Offer[] {
  const facts = surroundings.set?.facts ?? [];
  if ((reading.kind === 'follow-up' && where === 'operation') || (reading.kind === 'amendment' && where === 'amends')) {
    return facts
      .filter((each) => each.id !== undefined && (where === 'amends' || each.record === 'operation'))
      .map((each) => ({
        text: each.id ?? '',
        from: [each.record, each.date, each.patient].filter((part) => part !== undefined).join(', '),
      }));
  }
  const pointsTo = reading.kind === 'follow-up' ? reading.note.operation?.value : undefined;
  const operation = facts.find((each) => each.id === pointsTo && each.record === 'operation');
  if (where !== 'patient.ref' || pointsTo === undefined || operation?.patient === undefined) return [];
  return [{ text: operation.patient, from: `patient of ${pointsTo}` }];
}

/** Names of the format itself, which a department file refers to. */
function formatNames(where: string): readonly Offer[] {
  if (where === 'checks.check') return knownChecks.map(({ id, summary }) => ({ text: id, from: summary }));
  if (where !== 'also-required') return [];
  return [...fieldsBelow(recordPlan('operation'))].map(({ path, plan }) => ({
    text: path.join('.'),
    from: plan.guide.label,
  }));
}

function dates(where: string, today: string | null): readonly Offer[] {
  return today !== null && (where === 'date' || where === 'complications.found')
    ? [{ text: today, from: 'today' }]
    : [];
}
