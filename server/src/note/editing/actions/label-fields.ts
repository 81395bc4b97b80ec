import type { Department, Operation } from '@sideport/schemas';
import { readLabel } from '../../label/label.ts';
import { labelValue, type LabelReading } from '../../label/reading.ts';
import { yearOf } from '../offers-lens.ts';
import { insertAll } from '../../edits/insert-values.ts';
import { spotAt } from '../spots.ts';
import type { ActionSource } from './action.ts';

const FIELDS = ['maker', 'model', 'serial', 'lot', 'expiry'] as const;

/**
 * What the scanned label of a lens says, as proposals beside it: each carries a mark that a final note may not keep.
 * Fields that are already written are left alone; a check compares them.
 */
export const fillFromLabel: ActionSource = ({ reading, surroundings }, offset) => {
  if (reading.kind !== 'operation') return [];
  const aim = spotAt(reading.tree, reading.kind, offset);
  const { udi } = reading.note.lens ?? {};
  if (aim?.spot.path[0] !== 'lens' || udi?.key === undefined || udi.key === null) return [];
  const found = labelFields(readLabel(udi.value, yearOf(reading.note)), surroundings.department ?? null);
  const missing = FIELDS.filter((field) => found[field] !== undefined && !isWritten(reading.note, field));
  if (missing.length === 0) return [];
  return [
    {
      title: `Fill ${missing.join(', ')} from the scanned label`,
      safety: 'needs-review',
      edits: insertAll(
        reading,
        missing.map((field) => ({
          path: ['lens', field],
          value: found[field] ?? '',
          as: 'identifier',
          proposedFrom: 'label',
        })),
      ),
    },
  ];
};

type Found = Partial<Record<(typeof FIELDS)[number], string>>;

/** Maker and model come from the department's list, where the label's device identifier stands. */
export function labelFields(label: LabelReading, department: Department | null): Found {
  const device = labelValue(label, 'device-identifier');
  const listed = department?.lenses?.items.find(
    (lens) => device !== undefined && lens['device-identifier']?.value === device,
  );
  const all = {
    maker: listed?.maker?.value,
    model: listed?.model?.value,
    serial: labelValue(label, 'serial'),
    lot: labelValue(label, 'lot'),
    expiry: labelValue(label, 'expiry'),
  };
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined));
}

function isWritten({ lens }: Operation, field: (typeof FIELDS)[number]): boolean {
  return lens?.[field] !== undefined || lens?.$.said[field] !== undefined;
}
