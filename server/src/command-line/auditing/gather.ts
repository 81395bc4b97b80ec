import { dirname } from 'node:path';
import { auditFacts } from '../../note/audit/extract.ts';
import { AuditCollector, mergePartials, type AuditPartial } from '../../note/audit/partial.ts';
import { presentIn } from '../../note/audit/learn/present.ts';
import type { PresentDepartment } from '../../note/audit/learn/learn.ts';
import { readNote } from '../../note/reading/read-note.ts';
import { contextOf } from '../../note/review.ts';
import { isDepartmentName } from '../file-names.ts';
import { findNotes } from '../find-notes.ts';
import { NoteSets } from '../note-sets.ts';
import { detached } from '../../note/detached.ts';
import { showProgress } from '../checking/progress.ts';
import { inShard, type Shard } from '../checking/shard.ts';
import { mustBeWhole } from '../checking/whole-set.ts';
import { readInput } from '../read-input.ts';
import { FileProblem, WrongUse, type World } from '../world.ts';
import { mustNotOverlap } from './overlap.ts';
import { isPartialName, readPartial } from './partial-file.ts';

export interface Gathered {
  readonly partial: AuditPartial;
  readonly present: PresentDepartment;
  readonly problems: readonly string[];
}

export interface GatherOptions {
  readonly department: string | undefined;
  readonly shard: Shard | undefined;
}

/**
 * Reads notes one after the other and keeps their facts only, so that memory grows by a few hundred bytes a note.
 * Paths that end in .json are partial results of earlier runs and are put together with the rest.
 */
export async function gather(paths: readonly string[], options: GatherOptions, world: World): Promise<Gathered> {
  const parts = paths.filter(isPartialName).map((path) => readPartial(path, world));
  mustBeWhole(parts);
  const rest = paths.filter((path) => !isPartialName(path));
  const { inputs, missing } = rest.length === 0 ? { inputs: [], missing: [] } : await findNotes(rest, world);
  const problems = [...missing];
  const notes = inputs.filter(({ path }) => path === null || !isDepartmentName(path));
  if (parts.length === 0 && notes.length === 0)
    throw new WrongUse(missing.length > 0 ? missing.join('\n') : 'There is no note to audit: only a department file.');
  const sets = new NoteSets(world, options.department);
  const chosen = options.shard === undefined ? notes : inShard(notes, options.shard);
  const collector = new AuditCollector();
  const progress = showProgress(world.stderr, 'read');
  let present = presentIn(options.department === undefined ? null : sets.departmentAt(world.folder));
  for (const [at, input] of chosen.entries()) {
    try {
      const department = sets.departmentAt(input.path === null ? world.folder : dirname(input.path));
      const context = contextOf(readNote(await readInput(input, world)), { department, file: input.file });
      const facts = auditFacts(context);
      if (facts === 'unreadable')
        problems.push(
          `${input.file}: it has no id or is no note, and is not counted. sideport check says what is wrong.`,
        );
      collector.add(detached(facts));
      if (at === 0) present = presentIn(department);
    } catch (error) {
      if (!(error instanceof FileProblem)) throw error;
      problems.push(error.message);
    }
    if (at % 100 === 99) progress.show(at + 1, chosen.length);
  }
  progress.clear();
  const read = { file: 'the notes', shard: undefined, partial: collector.finish() };
  const all = notes.length === 0 ? parts : [...parts, read];
  mustNotOverlap(all);
  return { partial: mergePartials(all.map(({ partial }) => partial)), present, problems: [...new Set(problems)] };
}
