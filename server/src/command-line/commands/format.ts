import { formatText } from '../../note/editing/format.ts';
import { readNote } from '../../note/reading/read-note.ts';
import { defineCommand } from '../command.ts';
import { isDepartmentName } from '../file-names.ts';
import { findNotes, type Input } from '../find-notes.ts';
import { readInput } from '../read-input.ts';
import { sealPath } from '../sealing/seal-files.ts';
import { FileProblem, WrongUse, type World } from '../world.ts';

export const format = defineCommand({
  operands: 'PATH...',
  about:
    'Tidies layout and writes units out; words, numbers, order and comments stay. Names the files it changed. With -,\n' +
    'reads standard input and prints the tidy text. A note that is sealed, or that cannot be read\n' +
    'throughout, is left alone.',
  options: {
    check: { kind: 'flag', about: 'changes nothing; names what is not tidy and ends with 1 if anything is not' },
  },
  run: async ({ values, paths }, world) => {
    if (paths.length === 0) throw new WrongUse('Say which notes to tidy: sideport format PATH...');
    const { inputs, missing } = await findNotes(paths, world);
    const problems = [...missing];
    let untidy = 0;
    for (const input of inputs) {
      try {
        if (await formatOne(input, values.check, world)) untidy++;
      } catch (error) {
        if (!(error instanceof FileProblem)) throw error;
        problems.push(error.message);
      }
    }
    for (const problem of problems) world.stderr.write(`${problem}\n`);
    if (problems.length > 0) return 2;
    return values.check && untidy > 0 ? 1 : 0;
  },
});

/** Tidies one input, or only looks; whether there was anything to tidy. */
async function formatOne(input: Input, onlyLook: boolean, world: World): Promise<boolean> {
  const { file, path } = input;
  const text = await readInput(input, world);
  const kind = path !== null && isDepartmentName(path) ? 'department' : undefined;
  const { tree, kind: record } = readNote(text, kind);
  if (record === null || tree.faults.length > 0) {
    throw new FileProblem(`${file}: left as it is, because part of it cannot be read. sideport check says where.`);
  }
  // A seal is over every character: tidying would break it.
  if (path !== null && world.files.kind(sealPath(path)) !== null) return false;
  const tidy = formatText(text, kind);
  const differs = tidy !== text;
  if (path === null && !onlyLook) world.stdout.write(tidy);
  else if (differs) {
    if (!onlyLook && path !== null) write(world, path, file, tidy);
    world.stdout.write(`${file}\n`);
  }
  return differs;
}

function write({ files }: World, path: string, file: string, text: string): void {
  try {
    files.write(path, text);
  } catch (error) {
    throw error instanceof FileProblem ? new FileProblem(`${file}: not written, ${error.message}.`) : error;
  }
}
