import { planAt, recordPlan, type Path, type RecordKind } from '@sideport/schemas';
import type { Remark } from '../remark.ts';

/** The sections that say which lens: planned, kept ready, verified and implanted. */
const LENSES = ['lens', 'plan.lens', 'plan.spare-lens', 'safety.lens-verified'];

/** Whether a place says which eye or which lens: nobody's hand but the surgeon's changes anything there. */
export function isGuarded(path: Path, kind: RecordKind | null): boolean {
  const names = path.filter((step) => typeof step === 'string').join('.');
  if (LENSES.some((lens) => names === lens || names.startsWith(`${lens}.`))) return true;
  if (path.at(-1) === 'eye' || path.at(-1) === 'which-eye') return true;
  const plan = kind === null ? undefined : planAt(recordPlan(kind), path);
  return plan?.kind === 'value' && plan.notation.name === 'side';
}

/** Where a place says which eye or which lens, no fix is safe, whichever check offers it. */
export function withGuardedFixes(remarks: readonly Remark[], kind: RecordKind | null): Remark[] {
  return remarks.map((remark) =>
    remark.fixes.some(({ safety }) => safety === 'safe') && isGuarded(remark.path, kind)
      ? { ...remark, fixes: remark.fixes.map((fix) => ({ ...fix, safety: 'needs-review' })) }
      : remark,
  );
}
