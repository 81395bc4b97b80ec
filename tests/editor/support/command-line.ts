import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const program = fileURLToPath(new URL('../../../server/dist/sideport.cjs', import.meta.url));

export interface Remark {
  readonly check: string;
  readonly severity: 'error' | 'warning' | 'info';
  readonly message: string;
  readonly range: { readonly start: { readonly line: number; readonly column: number } };
}

/** What the command line says about a file: the editor has to say exactly the same. */
export function remarksOnCommandLine(file: string): readonly Remark[] {
  const run = spawnSync(process.execPath, [program, 'check', file, '--format', 'json'], { encoding: 'utf8' });
  const report: { readonly notes: readonly { readonly remarks: readonly Remark[] }[] } = JSON.parse(run.stdout);
  return report.notes.flatMap(({ remarks }) => remarks);
}
