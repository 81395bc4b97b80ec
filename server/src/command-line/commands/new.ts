import { dirname, resolve } from 'node:path';
import { newNoteText } from '../../note/editing/new-note.ts';
import { defineCommand } from '../command.ts';
import { isNoteName } from '../../note/set/set-layout.ts';
import { NoteSets } from '../note-sets.ts';
import { FileProblem, today, WrongUse } from '../world.ts';

export const newNote = defineCommand({
  operands: '[FILE]',
  about:
    'Starts the note of an operation from what the department usually does. What is filled in carries “# confirm”,\n' +
    'which a final note may not keep. Without a file: prints it.',
  options: { department: { kind: 'text', value: 'FILE', about: 'uses this department file' } },
  run: async ({ values, paths }, world) => {
    const { files, folder, now } = world;
    const [name] = paths;
    if (paths.length > 1) throw new WrongUse('Name one file: sideport new FILE.');
    if (name !== undefined && !isNoteName(name)) {
      throw new WrongUse(`${name}: the name of a note ends in .opnote.yaml.`);
    }
    const file = name === undefined ? undefined : resolve(folder, name);
    if (file !== undefined && files.kind(file) !== null)
      throw new FileProblem(`${name}: it exists already; nothing was written.`);
    const sets = new NoteSets(world, values.department);
    const text = newNoteText(sets.departmentAt(file === undefined ? folder : dirname(file)), today(now()));
    if (file === undefined) world.stdout.write(text);
    else files.write(file, text);
    return 0;
  },
});
