import type { Leaving } from '../leaving.ts';
import type { Table } from '../table.ts';
import { columnsOf } from './column.ts';

/** One part of a record with the id of the record and its place in the list, from 1. */
export interface PartRow<P> {
  readonly id: string;
  readonly number: number;
  readonly part: P;
  readonly eye: 'right' | 'left' | undefined;
}

/** A table of parts of records: its columns, and how to find the parts in a record. */
export interface PartTable<P> extends Table<PartRow<P>> {
  readonly partsOf: (leaving: Leaving) => readonly P[];
}

type Of<K extends Leaving['kind']> = Extract<Leaving, { readonly kind: K }>;

const WHOLE = { operation: 'operations', 'follow-up': 'follow-ups' } as const;

/** A table of parts of one kind of record. */
export function partTable<P, K extends keyof typeof WHOLE>(
  kind: K,
  name: string,
  title: string,
  partsOf: (leaving: Of<K>) => readonly P[],
  columns: Table<PartRow<P>>['columns'],
): PartTable<P> {
  const { key, integer } = columnsOf<PartRow<P>>();
  const first = [
    key('note_id', 'Note id', ({ id }) => id),
    integer('number', 'Place in the list, from 1', '1', (row) => String(row.number)),
  ];
  return {
    name,
    title,
    key: ['note_id', 'number'],
    partOf: WHOLE[kind],
    partsOf: (leaving) => (isOf(leaving, kind) ? partsOf(leaving) : []),
    columns: [...first, ...columns],
  };
}

const isOf = <K extends Leaving['kind']>(leaving: Leaving, kind: K): leaving is Of<K> => leaving.kind === kind;

/** The rows of a table of parts for one record. */
export function partRows<P>(table: PartTable<P>, leaving: Leaving): readonly PartRow<P>[] {
  const id = leaving.note.id?.value ?? '';
  const eye = leaving.note.eye?.value;
  return table.partsOf(leaving).map((part, index) => ({ id, number: index + 1, part, eye }));
}
