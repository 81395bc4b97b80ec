import { RemovalCount } from '../../note/deidentify/removal.ts';
import type { Leaving, LeavingDates } from '../../note/export/leaving.ts';
import { defineCommand } from '../command.ts';
import { readDay } from '../exporting/as-of.ts';
import { codeOptions, codesFromMemory, unconfirmedCodes, unusedMapLines } from '../exporting/code-options.ts';
import { leavingRecords } from '../exporting/gather.ts';
import { readKey } from '../exporting/key.ts';
import { Notices } from '../exporting/notices.ts';
import { removalText } from '../exporting/removal-text.ts';
import { writerFor } from '../exporting/writer-for.ts';
import { findNotes } from '../find-notes.ts';
import { refuseOutputOverNotes } from '../output-target.ts';
import { spareMemory } from '../spare-memory.ts';
import { NoteSets } from '../note-sets.ts';
import type { Options } from '../options.ts';
import { WrongUse } from '../world.ts';

const options = {
  as: {
    kind: 'choice',
    value: 'FORM',
    choices: ['json', 'ndjson', 'csv', 'parquet', 'fhir'],
    fallback: 'json',
    about: 'how the data are written',
  },
  output: { kind: 'text', value: 'PATH', about: 'a file, or a folder where there are several files' },
  codes: {
    kind: 'choice',
    value: 'SET',
    choices: ['none', 'icd10cm', 'icd10-opcs4'],
    fallback: 'none',
    about: 'suggests codes with their reasons',
  },
  'code-table': { kind: 'text', value: 'FILE', about: "the department's own entries of one code table" },
  'code-map': { kind: 'text', value: 'FILE', about: 'your own map to codes of a system that you have a licence for' },
  'as-of': {
    kind: 'text',
    value: 'DATE',
    about:
      'the day on which overdue reviews are counted and documents say they were made (usual: none are counted; now)',
  },
  deidentify: { kind: 'flag', about: 'takes out what could name a person; free text is withheld' },
  dates: {
    kind: 'choice',
    value: 'HOW',
    choices: ['year', 'shifted', 'days'],
    fallback: 'year',
    about: 'how dates leave when identifiers are taken out',
  },
  'keep-text': { kind: 'flag', about: 'keeps free text although it may name people' },
  key: { kind: 'text', value: 'FILE', about: 'the key of the pseudonyms, kept apart from the notes' },
  unguarded: { kind: 'flag', about: 'csv: leaves text that a spreadsheet would run as a formula' },
  bom: { kind: 'flag', about: 'csv: begins with a byte order mark, for spreadsheets' },
  department: { kind: 'text', value: 'FILE', about: 'uses this department file for every note' },
} as const satisfies Options;

export const exportNotes = defineCommand({
  operands: 'PATH...',
  about:
    'Writes notes as data: JSON, JSON Lines (ndjson), tables (csv, parquet) or FHIR R4 documents, operations in the order\n' +
    'of their ids, each followed by its follow-ups and amendments; decimals as written. Tables and FHIR files go into a\n' +
    'folder. Codes are suggestions for a coder to confirm.',
  options,
  run: async ({ values, paths }, world) => {
    if (paths.length === 0) throw new WrongUse('Say which notes to export: sideport export PATH...');
    if (!values.deidentify && (values['keep-text'] || values.key !== undefined || values.dates !== 'year')) {
      throw new WrongUse('--dates, --key and --keep-text belong to --deidentify.');
    }
    if (values.codes === 'none' && (values['code-table'] !== undefined || values['code-map'] !== undefined)) {
      throw new WrongUse('--code-table and --code-map need --codes icd10cm or --codes icd10-opcs4.');
    }
    if (values.as === 'fhir' && values.deidentify && values.dates === 'days') {
      throw new WrongUse('A FHIR document needs a date: with --as fhir choose --dates year or --dates shifted.');
    }
    const asOf = values['as-of'] === undefined ? undefined : readDay(values['as-of']);
    refuseOutputOverNotes(
      values.output,
      [...paths, values.key, values.department, values['code-table'], values['code-map']],
      world,
    );
    const { inputs, missing } = await findNotes(paths, world);
    if (inputs.length === 0) throw new WrongUse(missing.join('\n'));
    spareMemory(inputs, world);
    const sets = new NoteSets(world, values.department);
    const say = (text: string | undefined): void => {
      if (text !== undefined) world.stderr.write(`${text}\n`);
    };
    const codes =
      values.codes === 'none' ? undefined : codeOptions(values.codes, values['code-table'], values['code-map'], world);
    const folders = inputs.flatMap(({ path }) => (path === null ? [] : [sets.rootAround(path).folder]));
    const key = values.deidentify ? readKey(values.key, folders, world) : undefined;
    const deidentify = key && { dates: values.dates, keepText: values['keep-text'], keyedHash: key.keyedHash };
    const dates: LeavingDates = deidentify ? values.dates : 'as recorded';
    const writer = await writerFor(
      {
        form: values.as,
        output: values.output,
        dates,
        withCodes: codes !== undefined,
        guard: !values.unguarded,
        mark: values.bom,
        made: asOf === undefined ? undefined : `${asOf}T00:00:00Z`,
      },
      world,
    );
    const removed = new RemovalCount();
    const notices = new Notices({ form: writer.form, namesFiles: !values.deidentify, problems: missing });
    const leavingOptions = { ...(codes ? { codes } : {}), ...(deidentify ? { deidentify } : {}) };
    const fromMemory = new Set<string>();
    const leavesOut = (kind: Leaving['kind']): boolean => writer.leavesOut?.(kind) ?? false;
    const gathering = { inputs, sets, options: leavingOptions, leavesOut, removed, notices, asOf };
    for await (const record of leavingRecords(gathering, world)) {
      writer.add(record);
      for (const code of codesFromMemory(record.leaving)) fromMemory.add(code);
    }
    writer.finish();
    for (const remark of [...writer.remarks, ...notices.remarks]) say(remark);
    say(key?.remark);
    if (codes) say(unusedMapLines(codes, values['code-map']));
    say(unconfirmedCodes(fromMemory));
    if (deidentify) say(removalText(removed.list()));
    const problems = [...notices.problems, ...(writer.problems ?? [])];
    for (const problem of problems) say(problem);
    if (problems.length > 0) return 2;
    return notices.hasFinalWithErrors ? 1 : 0;
  },
});
