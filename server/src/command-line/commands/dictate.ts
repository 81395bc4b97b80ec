import { createHash } from 'node:crypto';
import { resolve } from 'node:path';
import { dictate as readDictation } from '../../note/dictation/dictate.ts';
import { keptDictation } from '../../note/dictation/kept-text.ts';
import { noteFromDictation } from '../../note/dictation/placing.ts';
import type { DictationResult } from '../../note/dictation/result.ts';
import { readNote } from '../../note/reading/read-note.ts';
import { defineCommand } from '../command.ts';
import { isNoteName } from '../../note/set/set-layout.ts';
import { readInput } from '../read-input.ts';
import { refuseOutputOverOtherNote } from '../output-target.ts';
import { writeOutput } from '../write-output.ts';
import { FileProblem, WrongUse, type World } from '../world.ts';

export const dictate = defineCommand({
  operands: 'PATH',
  about:
    'Turns a dictation into fields. PATH is a text, a note with a dictation in it, or - for standard input. What is only\n' +
    'proposed carries a mark that asks for confirmation; side, lens, axis and denied complications always do.',
  options: {
    format: {
      kind: 'choice',
      value: 'FORMAT',
      choices: ['yaml', 'json'],
      fallback: 'yaml',
      about: 'the note with its fields, or every value with the words it was read from',
    },
    into: { kind: 'text', value: 'NOTE', about: 'completes this note instead of beginning one; prints the result' },
    output: { kind: 'text', value: 'FILE', about: 'writes to a file instead of standard output' },
  },
  run: async ({ values, paths }, world) => {
    const [path] = paths;
    if (path === undefined || paths.length > 1)
      throw new WrongUse('Say which one dictation: sideport dictate PATH, or - for standard input.');
    refuseOutputOverOtherNote(values.output, values.format === 'yaml' ? (values.into ?? path) : undefined, world);
    const given = await readGiven(path, world);
    const into = values.into === undefined ? given.note : readFile(values.into, world);
    if (values.format === 'json') {
      const reading = into === undefined ? undefined : readNote(into);
      writeOutput(asJson(given.dictation, readDictation(given.dictation, reading)), values.output, world);
    } else {
      const { text, result } = noteFromDictation(given.dictation, into);
      writeOutput(text, values.output, world);
      for (const line of summary(result)) world.stderr.write(`${line}\n`);
    }
    return 0;
  },
});

/** A dictation, and the note it stands in. */
interface Given {
  readonly dictation: string;
  readonly note?: string;
}

async function readGiven(path: string, world: World): Promise<Given> {
  const absolute = path === '-' ? null : resolve(world.folder, path);
  if (absolute !== null && world.files.kind(absolute) !== 'file')
    throw new FileProblem(`${path}: there is no such file.`);
  const text = await readInput({ file: path, path: absolute }, world);
  if (absolute === null || !isNoteName(absolute)) return { dictation: text.replace(/^\uFEFF/u, '') };
  const kept = keptDictation(readNote(text));
  if (kept === undefined) throw new FileProblem(`${path}: this note holds no dictation.`);
  return { dictation: kept.text, note: text };
}

function readFile(file: string, world: World): string {
  try {
    return world.files.read(resolve(world.folder, file));
  } catch (error) {
    throw error instanceof FileProblem ? new FileProblem(`${file}: ${error.message}.`) : error;
  }
}

/** The shape that scripts rely on. The hash names the very text that the offsets are counted in. */
function asJson(dictation: string, result: DictationResult): string {
  const sha256 = createHash('sha256').update(dictation, 'utf8').digest('hex');
  const { version, values, unmatched, conflicts, withdrawn } = result;
  return `${JSON.stringify({ version, dictation: { sha256, length: dictation.length }, values, unmatched, conflicts, withdrawn }, null, 2)}\n`;
}

/** What still asks for the surgeon. Counts only: the words are in the note and in --format json. */
function summary({ values, unmatched, conflicts }: DictationResult): readonly string[] {
  const proposed = values.filter(({ state }) => state === 'proposed').length;
  const lines: string[] = [];
  if (proposed > 0)
    lines.push(
      `${proposed} proposed ${proposed === 1 ? 'value asks' : 'values ask'} for confirmation; each carries a mark.`,
    );
  if (conflicts.length > 0)
    lines.push(
      `${conflicts.length} ${conflicts.length === 1 ? 'contradiction was' : 'contradictions were'} left to you and not written.`,
    );
  if (unmatched.length > 0)
    lines.push(
      `${unmatched.length} ${unmatched.length === 1 ? 'stretch' : 'stretches'} of the dictation went into no field; sideport check names them in the note.`,
    );
  return lines;
}
