import { computeNote } from '../../note/computing/compute-note.ts';
import { proseAsHtml } from '../../note/prose/html.ts';
import { proseAsMarkdown } from '../../note/prose/markdown.ts';
import { proseOf } from '../../note/prose/prose-of.ts';
import { proseAsText } from '../../note/prose/text.ts';
import { readNote } from '../../note/reading/read-note.ts';
import { contextOf } from '../../note/review.ts';
import { defineCommand } from '../command.ts';
import { isDepartmentName } from '../file-names.ts';
import { findNotes } from '../find-notes.ts';
import { NoteSets } from '../note-sets.ts';
import { readInput } from '../read-input.ts';
import { writeOutput } from '../write-output.ts';
import { FileProblem, WrongUse } from '../world.ts';

export const show = defineCommand({
  operands: 'PATH',
  about:
    'Shows one note as prose for the record, in the order of the operation, with computed values and their cautions,\n' +
    'and says what is not recorded. Amendments of the same set stand beside the original.',
  options: {
    as: {
      kind: 'choice',
      value: 'FORM',
      choices: ['text', 'markdown', 'html', 'pdf'],
      fallback: 'text',
      about: 'plain text, Markdown, one page with the picture, or printed pages',
    },
    output: { kind: 'text', value: 'FILE', about: 'writes to a file instead of standard output' },
    department: { kind: 'text', value: 'FILE', about: 'uses this department file' },
  },
  run: async ({ values, paths }, world) => {
    const [path] = paths;
    if (path === undefined || paths.length > 1) throw new WrongUse('Say which one note: sideport show PATH.');
    const { inputs, missing } = await findNotes([path], world);
    const [input] = inputs;
    if (input === undefined) throw new FileProblem(missing.join('\n'));
    if (inputs.length > 1) throw new WrongUse(`${path} holds ${inputs.length} files; showing takes one note.`);
    if (input.path !== null && isDepartmentName(input.path)) {
      throw new WrongUse(`${input.file} is a department file; showing takes a note.`);
    }
    const reading = readNote(await readInput(input, world));
    const around = new NoteSets(world, values.department).around(input, reading);
    const prose = proseOf(reading, computeNote(contextOf(reading, around)), around.set);
    if (prose === undefined) throw new FileProblem(`${input.file}: this is not a note. sideport check says why.`);
    const { document, pictures } = prose;
    if (values.as === 'pdf') {
      const { proseAsPdf } = await import('../pdf/pdf-pages.ts');
      writeOutput(await proseAsPdf(document, pictures, world.now()), values.output, world);
    } else if (values.as === 'html') {
      writeOutput(proseAsHtml(document, pictures), values.output, world);
    } else {
      writeOutput(values.as === 'markdown' ? proseAsMarkdown(document) : proseAsText(document), values.output, world);
    }
    return 0;
  },
});
