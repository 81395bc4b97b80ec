import type { Absence } from '@sideport/schemas';
import type { Vocabulary } from '@sideport/schemas/notation/words.ts';
import type { LeavingDates } from '../leaving.ts';
import type { Cell, Column } from '../table.ts';

type Cells<R> = (row: R) => Cell;

/** Makers of columns for rows of one kind, so that a table reads as a list. */
export function columnsOf<R>() {
  return {
    text: (name: string, title: string, cell: Cells<R>): Column<R> => ({ name, title, type: 'string', cell }),
    key: (name: string, title: string, cell: Cells<R>): Column<R> => ({
      name,
      title,
      type: 'string',
      required: true,
      cell,
    }),
    /** A word of a closed vocabulary, or one of the words with which the field says why it has no value. */
    term: (
      name: string,
      title: string,
      terms: Vocabulary<string>,
      cell: Cells<R>,
      says: readonly Absence[] = [],
    ): Column<R> => ({
      name,
      title,
      type: 'string',
      words: [...terms.words.map(({ word }) => word), ...says],
      cell,
    }),
    /** A measured amount; its unit stands in the name as well. */
    number: (name: string, title: string, unit: string, cell: Cells<R>): Column<R> => ({
      name,
      title,
      type: 'number',
      unit,
      cell,
    }),
    integer: (name: string, title: string, unit: string, cell: Cells<R>): Column<R> => ({
      name,
      title,
      type: 'integer',
      unit,
      cell,
    }),
    yesNo: (name: string, title: string, cell: Cells<R>): Column<R> => ({ name, title, type: 'boolean', cell }),
    /** A calendar date, or what was made of it when dates do not leave as they are. */
    date: (name: string, title: string, dates: LeavingDates, cell: Cells<R>): Column<R> =>
      dateColumn(name, title, dates, cell),
  };
}

function dateColumn<R>(name: string, title: string, dates: LeavingDates, cell: Cells<R>): Column<R> {
  if (dates === 'year') return { name: `${name}_year`, title: `${title}: the year`, type: 'integer', unit: 'a', cell };
  if (dates === 'days')
    return { name: `${name}_day`, title: `${title}: days since the operation`, type: 'integer', unit: 'd', cell };
  const moved = dates === 'shifted' ? ' (moved by a secret number of days, the same for all dates of a patient)' : '';
  return { name: `${name}_date`, title: title + moved, type: 'date', cell };
}
