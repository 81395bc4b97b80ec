import { calculation } from '../calculation.ts';
import { quantity } from '../fields.ts';
import { found, refused } from '../outcome.ts';

const MINUTE = (label: string) => quantity(label, 'min', -1440, 4_000_000_000);

export const operationDuration = calculation<{ startMinute: number; finishMinute: number }, number>({
  name: 'operation-duration',
  topic: 'Time',
  definition: 'From start to finish of the operation.',
  inputs: { startMinute: MINUTE('start'), finishMinute: MINUTE('finish') },
  unit: 'min',
  domain: 'Both on one clock, in minutes; over midnight the date of the finish must be written.',
  method: 'finish - start',
  source: { citation: 'arithmetic', status: 'derived' },
  example: { input: { startMinute: 9 * 60 + 5, finishMinute: 9 * 60 + 28 }, gives: 23 },
  compute: ({ startMinute, finishMinute }) => {
    const minutes = finishMinute - startMinute;
    if (minutes < 0) return refused('the finish is before the start; write the date with both if it ran over midnight');
    return minutes > 1440 ? refused('start and finish are more than a day apart') : found(minutes);
  },
});
