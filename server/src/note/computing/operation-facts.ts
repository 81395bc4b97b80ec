import type { Department, Operation } from '@sideport/schemas';
import type { Outcome } from '../calculations/outcome.ts';
import type { Site } from '../calculations/position/site.ts';
import type { Eye, Vector } from '../calculations/quantities.ts';
import { corneaOf, type Cornea } from './corneas.ts';
import { amountOf, valueOf, type Known } from './known.ts';
import { mainIncisionOf, type MainIncision } from './main-incision.ts';
import { spotIn, type SpotFinder } from './result.ts';
import { refractionOf, type SpectacleRefraction } from './refractions.ts';
import { lensEntryOf, staffEntryOf, type LensEntry, type StaffEntry } from './department-entries.ts';
import { expectedCornea, expectedInduced, type InducedExpectation } from './expectation.ts';

export type Incision = NonNullable<Operation['incisions']>['items'][number];
export type LensSection = NonNullable<Operation['lens']>;

/** Where a value stands that has no better place; see `spot`. */
export const HEAD = ['eye', 'id', 'record'] as const;

/** What the values of an operation are computed from, read once from the typed note and the department file. */
export interface OperationFacts {
  readonly note: Operation;
  readonly department: Department | null;
  readonly today: string | null;
  readonly eye: Known<Eye>;
  readonly date: Known<string>;
  readonly seat: Known<Site>;
  readonly plannedSeat: Known<Site>;
  readonly cornea: Cornea;
  readonly axialLength: Known<number>;
  readonly chamberDepth: Known<number>;
  readonly lensThickness: Known<number>;
  readonly refraction: SpectacleRefraction;
  readonly target: Known<number>;
  /** The main incision as made, or as planned while none is recorded. */
  readonly mainIncision: MainIncision | undefined;
  readonly surgeon: StaffEntry;
  readonly plannedLens: LensEntry;
  readonly implantedLens: LensEntry;
  readonly expectedInduced: InducedExpectation;
  readonly expectedCornea: Outcome<Vector>;
  /** Whether the eye was left without a lens. */
  readonly aphakic: boolean;
  /** Dates of the follow-ups of the set that name this operation. */
  readonly visits: () => readonly string[];
  readonly spot: SpotFinder;
}

interface Around {
  readonly department: Department | null;
  readonly today: string | null;
  readonly visits: () => readonly string[];
}

export function operationFacts(note: Operation, { department, today, visits }: Around): OperationFacts {
  const biometry = note.preop?.biometry;
  const eye = valueOf(note.eye, 'the operated eye');
  const seat = valueOf(note.seat, "the surgeon's seat");
  const plannedSeat = valueOf(note.plan?.seat, "the surgeon's planned seat");
  const cornea = corneaOf(biometry, department?.['keratometric-index']?.value.amount);
  const mainIncision = mainIncisionOf(note, eye, { seat, plannedSeat });
  const surgeon = staffEntryOf(note, department);
  const induced = expectedInduced(mainIncision, surgeon, eye);
  return {
    note,
    department,
    today,
    eye,
    date: valueOf(note.date, 'the date of the operation'),
    seat,
    plannedSeat,
    cornea,
    axialLength: amountOf(biometry?.['axial-length'], 'the axial length'),
    chamberDepth: amountOf(biometry?.['chamber-depth'], 'the chamber depth'),
    lensThickness: amountOf(biometry?.['lens-thickness'], 'the lens thickness'),
    refraction: refractionOf(note.preop, department?.['vertex-distance']?.value.amount),
    target: amountOf(note.plan?.target, 'the target refraction'),
    mainIncision,
    surgeon,
    plannedLens: lensEntryOf(note.plan?.lens, department, 'the planned lens'),
    implantedLens: lensEntryOf(note.lens, department, 'the implanted lens'),
    expectedInduced: induced,
    expectedCornea: expectedCornea(cornea, induced),
    aphakic: note.lens?.placed?.value === 'none',
    visits,
    spot: spotIn(note.eye, note.id, note.record, note.$),
  };
}
