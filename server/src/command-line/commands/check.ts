import { fails, forSharedLog, sortReport } from '../../note/reports/report-input.ts';
import { checkFormats } from '../check-formats.ts';
import type { Outcome } from '../checking/check-many.ts';
import { checkInputs, readJobs } from '../checking/check-inputs.ts';
import { inShard, readShard, type Shard } from '../checking/shard.ts';
import { defineCommand } from '../command.ts';
import { findNotes } from '../find-notes.ts';
import { refuseOutputOverNotes } from '../output-target.ts';
import { writeOutput } from '../write-output.ts';
import { WrongUse, type World } from '../world.ts';

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
    'changed-since': {
      kind: 'text',
      value: 'REV',
      about: 'only notes that changed in git since this revision, and those that point to them',
    },
    shard: { kind: 'text', value: 'I/N', about: 'only this part of the notes, such as 2/4' },
    merge: { kind: 'flag', about: 'PATHs are JSON reports, for instance of all shards; puts them together' },
    mask: {
      kind: 'flag',
      about: 'masks what could name a person in text and json, for logs that others read',
    },
    jobs: { kind: 'text', value: 'N', about: 'how many threads check (usual: as many as help)' },
    'no-cache': { kind: 'flag', about: 'checks every note anew and keeps nothing for the next time' },
  },
  run: async ({ values, paths }, world) => {
    refuseOutputOverNotes(values.output, [...paths, values.department], world);
    const shard = values.shard === undefined ? undefined : readShard(values.shard);
    if (values.merge && shard !== undefined)
      throw new WrongUse('--merge puts all parts together; --shard belongs to the runs before.');
    const { notes, problems } = values.merge
      ? { notes: (await import('../checking/merge.ts')).mergeReports(paths, world), problems: [] }
      : await checkPaths(paths, values, shard, world);
    const failOn = values['fail-on'];
    const format = checkFormats.find(({ name }) => name === values.format) ?? checkFormats[0];
    const report = await format.write(values.mask ? forSharedLog(notes) : sortReport(notes), {
      failOn,
      shard,
      // Asked only when there is something to say.
      get colour() {
        return values.output === undefined && world.stdout.colour;
      },
    });
    writeOutput(report, values.output, world);
    for (const problem of problems) world.stderr.write(`${problem}\n`);
    if (problems.length > 0) return 2;
    return notes.some((note) => note.remarks.some(({ severity }) => fails(severity, failOn))) ? 1 : 0;
  },
});

interface CheckValues {
  readonly department: string | undefined;
  readonly 'changed-since': string | undefined;
  readonly jobs: string | undefined;
  readonly 'no-cache': boolean;
}

async function checkPaths(
  paths: readonly string[],
  values: CheckValues,
  shard: Shard | undefined,
  world: World,
): Promise<Outcome> {
  if (paths.length === 0) throw new WrongUse('Say which notes to check: sideport check PATH...');
  const jobs = values.jobs === undefined ? undefined : readJobs(values.jobs);
  const { inputs: all, missing } = await findNotes(paths, world);
  const changed =
    values['changed-since'] === undefined
      ? all
      : await (await import('../checking/changed.ts')).changedInputs(all, values['changed-since'], world);
  const inputs = shard === undefined ? changed : inShard(changed, shard);
  const outcome = await checkInputs(
    inputs,
    { department: values.department, jobs, useCache: !values['no-cache'] },
    world,
  );
  return { notes: outcome.notes, problems: [...missing, ...outcome.problems] };
}
