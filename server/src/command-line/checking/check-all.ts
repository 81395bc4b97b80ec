import { compareText } from '../../note/reports/report-input.ts';
import type { Input } from '../find-notes.ts';
import type { Checked, FileFacts } from './checker.ts';
import type { CheckerPool } from './checker-pool.ts';
import { inBatches } from './in-batches.ts';

interface Placed {
  readonly input: Input;
  /** Its place among the inputs. */
  readonly at: number;
}

/** Checks inputs; the results stand in their order. */
export async function checkAll(
  inputs: readonly Input[],
  facts: readonly FileFacts[],
  { pool, done }: { readonly pool: CheckerPool; readonly done: (count: number) => void },
): Promise<readonly Checked[]> {
  const ordered = besidePartners(inputs, facts);
  const checkers = await pool.checkers();
  await Promise.all(checkers.map((checker) => checker.know(facts)));
  const checked = await inBatches(
    ordered,
    checkers,
    (checker, batch) => checker.check(batch.map(({ input }) => input)),
    done,
  );
  const results: Checked[] = [];
  ordered.forEach(({ at }, order) => {
    const result = checked[order];
    if (result !== undefined) results[at] = result;
  });
  return results;
}

/**
 * The inputs in an order in which a follow-up comes right after the operation it points to, so that a note read for
 * one is still at hand for the other.
 */
function besidePartners(inputs: readonly Input[], facts: readonly FileFacts[]): readonly Placed[] {
  const partner = new Map(facts.map(({ path, facts: own }) => [path, own?.pointsTo ?? own?.id ?? '']));
  return inputs
    .map((input, at) => ({ input, at, by: partner.get(input.path ?? '') ?? '' }))
    .toSorted((a, b) => compareText(a.by, b.by) || compareText(b.input.file, a.input.file));
}
