import { join } from 'node:path';
import type { ReportedNote } from '../../note/reports/report-input.ts';
import type { Input } from '../find-notes.ts';
import type { World } from '../world.ts';
import { CACHE_FOLDER } from './cache.ts';
import { contentHash } from './content-hash.ts';
import type { Hashes } from './hashes.ts';
import { readKept, writeKept, type KeptFile } from './kept-file.ts';

interface Around {
  /** Every note of the sets the inputs belong to, absolute. */
  readonly paths: readonly string[];
  /** The department files that count for any of the inputs, absolute. */
  readonly departments: readonly string[];
  readonly hashes: Hashes;
  readonly program: string;
  readonly day: string;
  readonly world: World;
}

/**
 * What the last run over the same inputs found out: it counts only where not one byte of any of them, of their sets or
 * of their department files is another. Then nothing has to be looked up note by note.
 */
export class WholeRun {
  readonly #world: World;
  readonly #file: KeptFile;
  /** undefined where something cannot be read. */
  readonly #key: string | undefined;

  constructor(inputs: readonly Input[], around: Around) {
    this.#world = around.world;
    this.#file = { path: join(around.world.folder, CACHE_FOLDER, 'run.json'), header: 'sideport check of a whole run' };
    this.#key = keyOf(inputs, around);
  }

  find(): readonly ReportedNote[] | undefined {
    const body = this.#key === undefined ? undefined : readKept(this.#world.files, this.#file, this.#key);
    return body === undefined ? undefined : (JSON.parse(body) as ReportedNote[]);
  }

  keep(notes: readonly ReportedNote[]): void {
    if (this.#key !== undefined) writeKept(this.#world.files, this.#file, this.#key, JSON.stringify(notes));
  }
}

function keyOf(
  inputs: readonly Input[],
  { paths, departments, hashes, program, day, world: { folder } }: Around,
): string | undefined {
  const lines = [program, day];
  // A folder that was moved as a whole is the same one.
  const named = (path: string): string => (path.startsWith(folder) ? path.slice(folder.length) : path);
  for (const path of [...departments, ...paths]) {
    const hash = hashes.of(path);
    if (hash === null) return undefined;
    lines.push(`${hash} ${JSON.stringify(named(path))}`);
  }
  for (const { path, file } of inputs) {
    const hash = path === null ? null : hashes.of(path);
    if (hash === null) return undefined;
    lines.push(`${hash} ${JSON.stringify(file)}`);
  }
  return contentHash(lines.join('\n'));
}
