import { computeNote } from '../../note/computing/compute-note.ts';
import { proseAsHtml } from '../../note/prose/html.ts';
import { proseAsMarkdown } from '../../note/prose/markdown.ts';
import { proseOf } from '../../note/prose/prose-of.ts';
import { proseAsText } from '../../note/prose/text.ts';
import { contextOf } from '../../note/review.ts';
import { defineCommand } from '../command.ts';
import { notANote, oneNote } from '../one-note.ts';
import { refuseOutputOverNotes } from '../output-target.ts';
import { writeOutput } from '../write-output.ts';

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
    refuseOutputOverNotes(values.output, [...paths, values.department], world);
    const { input, reading, around } = await oneNote(
      paths,
      { name: 'show', doing: 'showing' },
      values.department,
      world,
    );
    const prose = proseOf(reading, computeNote(contextOf(reading, around)), around.set);
    if (prose === undefined) throw notANote(input);
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
