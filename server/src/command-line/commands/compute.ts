import { computeNote } from '../../note/computing/compute-note.ts';
import { contextOf } from '../../note/review.ts';
import { defineCommand } from '../command.ts';
import { computedJson } from '../computed-json.ts';
import { computedText } from '../computed-text.ts';
import { notANote, oneNote } from '../one-note.ts';

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
    const words = { name: 'compute', doing: 'computing' };
    const { input, reading, around } = await oneNote(paths, words, values.department, world);
    if (reading.kind === null) throw notANote(input);
    const computed = computeNote(contextOf(reading, around));
    world.stdout.write(
      values.format === 'json' ? computedJson(input.file, computed) : computedText(input.file, computed),
    );
    return 0;
  },
});
