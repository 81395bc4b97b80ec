import type { Amendment } from '@sideport/schemas';
import { word } from '../cell-values.ts';
import type { Leaving } from '../leaving.ts';
import type { Table } from '../table.ts';
import { columnsOf } from './column.ts';

type Change = NonNullable<Amendment['changes']>['items'][number];

interface AmendmentRow {
  /** The note that it amends: an operation, a visit, or another amendment. */
  readonly amends: string | undefined;
  readonly amendment: Amendment;
  /** Place among the changes of the amendment, from 1. */
  readonly number: number;
  /** Undefined for an amendment in words alone. */
  readonly change: Change | undefined;
}

const { key, text, integer } = columnsOf<AmendmentRow>();

export const amendmentTable: Table<AmendmentRow> = {
  name: 'amendments',
  title: 'Amendments, one row for each change; the note itself stands as it was signed',
  key: ['amendment_id', 'number'],
  columns: [
    text('note_id', 'Note id of the amended note', ({ amends }) => amends),
    integer('number', 'Place among the changes of the amendment, from 1', '1', (row) => String(row.number)),
    key('amendment_id', 'Id of the amendment', ({ amendment }) => amendment.id?.value ?? ''),
    text('kind', 'Kind', ({ amendment }) => word(amendment.kind)),
    text('at', 'Written at', ({ amendment }) => word(amendment.at)),
    text('by', 'Author', ({ amendment }) => word(amendment.by)),
    text('field', 'Field', ({ change }) => word(change?.field)),
    text('was', 'Was', ({ change }) => word(change?.was)),
    text('now', 'Now', ({ change }) => word(change?.now)),
    text('reason', 'Reason', ({ change, amendment }) => word(change?.reason) ?? word(amendment.reason)),
    text('text', 'Text', ({ amendment }) => word(amendment.text)),
  ],
};

/**
 * The amendments that a record brings with it: those of an operation or visit, the first time that its id leaves, and
 * an amendment whose note is not in its set. So each stands once, also where a set leaves folder by folder.
 */
export function amendmentRows(leaving: Leaving): readonly AmendmentRow[] {
  if (leaving.kind === 'amendment') {
    return leaving.withNote ? [] : rowsOf(leaving.note, leaving.note.amends?.value);
  }
  return leaving.repeated ? [] : leaving.amendments.flatMap((amendment) => rowsOf(amendment, leaving.note.id?.value));
}

function rowsOf(amendment: Amendment, amends: string | undefined): readonly AmendmentRow[] {
  const changes: readonly (Change | undefined)[] = amendment.changes?.items ?? [];
  return (changes.length === 0 ? [undefined] : changes).map((change, index) => ({
    amends,
    amendment,
    number: index + 1,
    change,
  }));
}
