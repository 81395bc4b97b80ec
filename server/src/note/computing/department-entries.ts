import type { Department, Field, Operation } from '@sideport/schemas';
import { refused, type Refused } from '../calculations/outcome.ts';

type Staff = NonNullable<Department['staff']>['items'][number];
type Lens = NonNullable<Department['lenses']>['items'][number];

/** The department's entry for somebody or something that the note names, or why there is none. */
export type StaffEntry = { readonly ok: true; readonly ref: string; readonly entry: Staff } | Refused;
export type LensEntry = { readonly ok: true; readonly model: string; readonly entry: Lens } | Refused;

/** The entry of the surgeon who operates. */
export function staffEntryOf(note: Operation, department: Department | null): StaffEntry {
  const ref = note.team?.items.find((member) => member.role?.value === 'surgeon')?.ref?.value;
  if (ref === undefined) return refused('the team names no surgeon');
  if (department === null) return refused('there is no department file with the incision effect of the surgeon');
  const entry = department.staff?.items.find((person) => person.ref?.value === ref);
  return entry === undefined ? refused(`the department file does not know surgeon ${ref}`) : { ok: true, ref, entry };
}

interface NamedLens {
  readonly maker?: Field<string>;
  readonly model?: Field<string>;
}

/** The entry of a lens model in the department's list; the maker must agree where both name one. */
export function lensEntryOf(lens: NamedLens | undefined, department: Department | null, name: string): LensEntry {
  const model = lens?.model?.value;
  if (model === undefined) return refused(`the model of ${name} is missing`);
  if (department === null) return refused('there is no department file with the constants of the lens');
  const maker = lens?.maker?.value;
  const entry = department.lenses?.items.find(
    (listed) =>
      listed.model?.value === model &&
      (maker === undefined || listed.maker === undefined || listed.maker.value === maker),
  );
  return entry === undefined
    ? refused(`the department's lens list does not have the model ${model}`)
    : { ok: true, model, entry };
}
