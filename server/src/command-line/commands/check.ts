import { resolve } from 'node:path';
import { readNote } from '../../note/reading/read-note.ts';
import { reviewNote, reviewReading } from '../../note/review.ts';
import { fails, sortReport, type ReportedNote } from '../../note/reports/report-input.ts';
import { checkFormats } from '../check-formats.ts';
import { defineCommand } from '../command.ts';
import { isDepartmentName } from '../file-names.ts';
import { findNotes, type Input } from '../find-notes.ts';
import { reportOf } from '../note-report.ts';
import { NoteSets } from '../note-sets.ts';
import { readInput } from '../read-input.ts';
import { FileProblem, WrongUse, type World } from '../world.ts';

export const check = defineCommand({
  operands: 'PATH...',
  about:
    'Reads notes and says what is wrong with them. A path is a note, a department file, a folder, a pattern, or - for\n' +
    'standard input. Follow-ups and amendments are checked together with their operation. No remark, no output.',
  options: {
    format: {
      kind: 'choice',
      value: 'FORMAT',
      choices: checkFormats.map(({ name }) => name),
      fallback: 'text',
      about: 'how remarks are written',
    },
    output: { kind: 'text', value: 'FILE', about: 'writes them to a file' },
    'fail-on': {
      kind: 'choice',
      value: 'LEVEL',
      choices: ['error', 'warning', 'never'],
      fallback: 'error',
      about: 'the least level that makes the command end with 1',
    },
    department: { kind: 'text', value: 'FILE', about: 'uses this department file for every note' },
  },
  run: async ({ values, paths }, world) => {
    if (paths.length === 0) throw new WrongUse('Say which notes to check: sideport check PATH...');
    const { inputs, missing } = await findNotes(paths, world);
    const sets = new NoteSets(world, values.department);
    const problems = [...missing];
    const notes: ReportedNote[] = [];
    for (const input of inputs) {
      try {
        notes.push(await checkOne(input, sets, world));
      } catch (error) {
        if (!(error instanceof FileProblem)) throw error;
        problems.push(error.message);
      }
    }
    const failOn = values['fail-on'];
    const format = checkFormats.find(({ name }) => name === values.format) ?? checkFormats[0];
    const report = await format.write(sortReport(notes), {
      failOn,
      colour: values.output === undefined && world.stdout.colour,
    });
    if (values.output === undefined) world.stdout.write(report);
    else world.files.write(resolve(world.folder, values.output), report);
    for (const problem of problems) world.stderr.write(`${problem}\n`);
    if (problems.length > 0) return 2;
    return notes.some((note) => note.remarks.some(({ severity }) => fails(severity, failOn))) ? 1 : 0;
  },
});

async function checkOne(input: Input, sets: NoteSets, world: World): Promise<ReportedNote> {
  const text = await readInput(input, world);
  if (input.path !== null && isDepartmentName(input.path)) {
    const { reading, remarks } = reviewNote(text, { file: input.file }, 'department');
    return reportOf(input.file, reading, remarks, null);
  }
  const reading = readNote(text);
  const surroundings = sets.around(input, reading);
  return reportOf(input.file, reading, reviewReading(reading, surroundings).remarks, surroundings.set);
}
