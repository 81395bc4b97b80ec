import type { Department } from '@sideport/schemas';
import type { Remark } from '../remark.ts';
import { isFixedCheck } from './known-checks.ts';

/** Raises, lowers or silences remarks as the department file says; checks that cannot be allowed stay as they are. */
export function departmentSeverity(remarks: readonly Remark[], department: Department | null): Remark[] {
  const settings = department?.checks?.items ?? [];
  if (settings.length === 0) return [...remarks];
  const bySeverity = new Map(settings.map((setting) => [setting.check?.value, setting.severity?.value]));
  return remarks.flatMap((remark) => {
    const severity = bySeverity.get(remark.check);
    if (severity === undefined || isFixedCheck(remark.check)) return [remark];
    return severity === 'off' ? [] : [{ ...remark, severity }];
  });
}
