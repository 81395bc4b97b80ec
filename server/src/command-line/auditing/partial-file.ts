import { resolve } from 'node:path';
import * as z from 'zod';
import type { AuditPartial } from '../../note/audit/partial.ts';
import type { Shard } from '../checking/shard.ts';
import { shardMark, type Part } from '../checking/whole-set.ts';
import { FileProblem, type World } from '../world.ts';

// The facts themselves were written by this program and are taken as they are; only the frame is looked at.
const frame = z.object({
  version: z.literal(1),
  operations: z.array(z.looseObject({ record: z.literal('operation'), id: z.string() })),
  followUps: z.array(z.looseObject({ record: z.literal('follow-up'), id: z.string() })),
  amendments: z.array(z.looseObject({ record: z.literal('amendment'), id: z.string() })),
  unreadable: z.int().nonnegative(),
  shard: shardMark,
});

/** Whether a path is a partial result of an audit rather than notes. */
export function isPartialName(path: string): boolean {
  return path.endsWith('.json');
}

/** A partial result and the file it stands in. */
export interface PartialFile extends Part {
  readonly partial: AuditPartial;
}

/** Reads a partial result. Throws FileProblem when it is none. */
export function readPartial(path: string, world: World): PartialFile {
  let text: string;
  try {
    text = world.files.read(resolve(world.folder, path));
  } catch (error) {
    throw error instanceof FileProblem ? new FileProblem(`${path}: ${error.message}.`) : error;
  }
  const because = `${path}: this is not a partial result of sideport audit --format partial.`;
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    throw new FileProblem(because);
  }
  const framed = frame.safeParse(data);
  if (!framed.success) throw new FileProblem(because);
  return { file: path, shard: framed.data.shard, partial: data as AuditPartial };
}

/** With `shard`, the file says which part of the set it is, so that a missing one is noticed. */
export function writePartial(partial: AuditPartial, shard: Shard | undefined): string {
  return `${JSON.stringify({ ...partial, ...(shard && { shard }) })}\n`;
}
