import { resolve } from 'node:path';
import * as z from 'zod';
import type { AuditPartial } from '../../note/audit/partial.ts';
import { FileProblem, type World } from '../world.ts';

// The facts themselves were written by this program and are taken as they are; only the frame is looked at.
const frame = z.object({
  version: z.literal(1),
  operations: z.array(z.looseObject({ record: z.literal('operation'), id: z.string() })),
  followUps: z.array(z.looseObject({ record: z.literal('follow-up'), id: z.string() })),
  amendments: z.array(z.looseObject({ record: z.literal('amendment'), id: z.string() })),
  unreadable: z.int().nonnegative(),
});

/** Whether a path is a partial result of an audit rather than notes. */
export function isPartialName(path: string): boolean {
  return path.endsWith('.json');
}

/** Reads a partial result. Throws FileProblem when it is none. */
export function readPartial(path: string, world: World): AuditPartial {
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
  if (!frame.safeParse(data).success) throw new FileProblem(because);
  return data as AuditPartial;
}

export function writePartial(partial: AuditPartial): string {
  return `${JSON.stringify(partial)}\n`;
}
