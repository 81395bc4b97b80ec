import type { SpokenField } from '@sideport/schemas/spoken/phrase.ts';
import type { Item } from './scan.ts';

/** Fields of which one replaces another: two kinds of viscoelastic, two antibiotics. */
export function familyOf(field: SpokenField): string | undefined {
  return /^(ovd\[|pupil-aid\[|drugs\[(?:intracameral|subconjunctival)|after-care\.drops\[).*\.(?:kind|agent|drug)$/u.exec(
    field.path,
  )?.[1];
}

/** The entry of a list that a field belongs to, as its path begins. */
export function entryOf({ path }: SpokenField): string {
  return path.slice(0, path.lastIndexOf(']') + 1);
}

/** Whether two islands can give values of one field, or of fields of which one replaces the other. */
export function sharesField(a: Item, b: Item): boolean {
  const fields = a.meanings.flatMap((meaning) => ('field' in meaning ? [meaning.field] : []));
  return b.meanings.some(
    (meaning) =>
      'field' in meaning &&
      fields.some(
        (field) =>
          field === meaning.field || (familyOf(field) !== undefined && familyOf(field) === familyOf(meaning.field)),
      ),
  );
}
