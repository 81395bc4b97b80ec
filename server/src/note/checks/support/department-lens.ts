import type { Department, Operation } from '@sideport/schemas';
import { sameName } from './lenses.ts';

export type ListedLens = NonNullable<Department['lenses']>['items'][number];

interface NamedLens {
  readonly maker?: { readonly value: string };
  readonly model?: { readonly value: string };
}

/** The lens of the department's list that a lens names; makers may use the same model name. */
export function listedLens(department: Department | null, lens: NamedLens | undefined): ListedLens | undefined {
  const model = lens?.model?.value;
  if (model === undefined) return undefined;
  const same =
    department?.lenses?.items.filter(
      (candidate) => candidate.model !== undefined && sameName(candidate.model.value, model),
    ) ?? [];
  const maker = lens?.maker?.value;
  return (
    same.find(
      (candidate) => maker !== undefined && candidate.maker !== undefined && sameName(candidate.maker.value, maker),
    ) ?? same[0]
  );
}

/** The lenses of a note that are held against the list: the implanted one, or, as long as there is none, the planned one. */
export function lensToHold(note: Operation) {
  if (note.lens?.placed?.value === 'none') return undefined;
  return note.lens?.model === undefined ? note.plan?.lens : note.lens;
}
