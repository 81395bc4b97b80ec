import { readFileSync, readdirSync } from 'node:fs';
import { dirname } from 'node:path';
import { inject } from 'vitest';

/** The process ids of the language servers that the editor under test has started. */
export function noteServers(): readonly number[] {
  const scratch = dirname(inject('editor').folders);
  return readdirSync('/proc')
    .filter((entry) => /^\d+$/.test(entry))
    .filter((entry) => {
      const command = commandLine(entry);
      return command.includes(`${scratch}/extensions/`) && command.includes('language-server.cjs');
    })
    .map(Number);
}

/** Empty for a process that has ended meanwhile. */
function commandLine(process: string): string {
  try {
    return readFileSync(`/proc/${process}/cmdline`, 'utf8');
  } catch {
    return '';
  }
}
