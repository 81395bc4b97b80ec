import { computeNote } from '../../note/computing/compute-note.ts';
import { readNote } from '../../note/reading/read-note.ts';
import { contextOf } from '../../note/review.ts';
import { defineCommand } from '../command.ts';
import { computedJson } from '../computed-json.ts';
import { computedText } from '../computed-text.ts';
import { isDepartmentName } from '../file-names.ts';
import { findNotes } from '../find-notes.ts';
import { NoteSets } from '../note-sets.ts';
import { readInput } from '../read-input.ts';
import { FileProblem, WrongUse } from '../world.ts';

export const compute = defineCommand({
  operands: 'PATH',
  about:
    'Shows every value that can be computed from one note, with its inputs, method, source and cautions, and says\n' +
    'why the others cannot. A follow-up is computed together with its operation.',
  options: {
    format: {
      kind: 'choice',
      value: 'FORMAT',
      choices: ['text', 'json'],
      fallback: 'text',
      about: 'how values are written',
    },
    department: { kind: 'text', value: 'FILE', about: 'uses this department file' },
  },
  run: async ({ values, paths }, world) => {
    const [path] = paths;
    if (path === undefined || paths.length > 1) throw new WrongUse('Say which one note: sideport compute PATH.');
    const { inputs, missing } = await findNotes([path], world);
    const [input] = inputs;
    if (input === undefined) throw new FileProblem(missing.join('\n'));
    if (inputs.length > 1) throw new WrongUse(`${path} holds ${inputs.length} files; computing takes one note.`);
    if (input.path !== null && isDepartmentName(input.path)) {
      throw new WrongUse(`${input.file} is a department file; computing takes a note.`);
    }
    const reading = readNote(await readInput(input, world));
    if (reading.kind === null) throw new FileProblem(`${input.file}: this is not a note. sideport check says why.`);
    const computed = computeNote(contextOf(reading, new NoteSets(world, values.department).around(input, reading)));
    world.stdout.write(
      values.format === 'json' ? computedJson(input.file, computed) : computedText(input.file, computed),
    );
    return 0;
  },
});
