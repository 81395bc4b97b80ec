import AjvDraft04 from 'ajv-draft-04';
import addFormats from 'ajv-formats';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { writeSarif } from '../../server/src/note/reports/sarif.ts';
import { EXAMPLE, OPTIONS, remark } from './example.ts';

// The published schema of SARIF 2.1.0 as a public package carries it (2.1.0-rtm.5, draft-04). The errata 01 text
// of the standard is in no package; it differs in descriptions and in stricter `required` lists.
const schemaFile = new URL(
  '../../node_modules/@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json',
  import.meta.url,
);
// One pattern of the published schema is not a regular expression in Unicode mode.
const ajv = new AjvDraft04({ strict: false, allErrors: true, unicodeRegExp: false });
addFormats(ajv);
const validate = ajv.compile(JSON.parse(readFileSync(schemaFile, 'utf8')));

interface Region {
  startLine: number;
  startColumn: number;
  endLine: number;
  endColumn: number;
}
interface Result {
  ruleId: string;
  ruleIndex: number;
  level: string;
  message: { text?: string };
  locations: { physicalLocation: { artifactLocation: { uri: string }; region: Region } }[];
  partialFingerprints: { primaryLocationLineHash: string };
}
interface Log {
  version: string;
  runs: {
    tool: { driver: { rules: { id: string }[] } };
    columnKind: string;
    artifacts: { location: { uri: string } }[];
    results: Result[];
  }[];
}

function log(text = writeSarif(EXAMPLE, OPTIONS)): Log {
  const parsed: Log = JSON.parse(text);
  return parsed;
}

function results(of: Log): Result[] {
  return of.runs[0]?.results ?? [];
}

describe('against the published schema', () => {
  test('the report of the invented notes is valid, and so is that of no notes', () => {
    validate(log());
    expect(validate.errors).toBeNull();
    expect(validate(log(writeSarif([], OPTIONS)))).toBe(true);
  });

  test.each<[string, (broken: Log) => void]>([
    ['an unknown level', (broken) => Object.assign(results(broken)[0] ?? {}, { level: 'fatal' })],
    [
      'line 0',
      (broken) => Object.assign(results(broken)[0]?.locations[0]?.physicalLocation.region ?? {}, { startLine: 0 }),
    ],
    ['an unknown property', (broken) => Object.assign(results(broken)[0] ?? {}, { surgeon: 'x' })],
    ['a missing message', (broken) => Object.assign(results(broken)[0] ?? {}, { message: undefined })],
    [
      'a blank in a file reference',
      (broken) => Object.assign(broken.runs[0]?.artifacts[0]?.location ?? {}, { uri: 'a b' }),
    ],
    ['a file listed twice', (broken) => broken.runs[0]?.artifacts.push(...structuredClone(broken.runs[0].artifacts))],
  ])('%s is rejected', (_what, breakIt) => {
    const broken = log();
    breakIt(broken);
    expect(validate(broken)).toBe(false);
  });
});

test('rules are listed once and every result points at its own', () => {
  const [run] = log().runs;
  const rules = run?.tool.driver.rules.map((rule) => rule.id) ?? [];
  expect(rules).toEqual([...new Set(rules)]);
  for (const result of run?.results ?? []) expect(rules[result.ruleIndex]).toBe(result.ruleId);
});

test('places keep their 1-based UTF-16 columns with an exclusive end, and severities map to levels', () => {
  expect(log().runs[0]?.columnKind).toBe('utf16CodeUnits');
  expect(results(log()).map((r) => r.level)).toEqual(['warning', 'error', 'error', 'error', 'note']);
  expect(results(log())[3]?.locations[0]?.physicalLocation.region).toEqual({
    startLine: 3,
    startColumn: 6,
    endLine: 4,
    endColumn: 2,
  });
});

function prints(notes: typeof EXAMPLE): readonly string[] {
  return results(log(writeSarif(notes, OPTIONS))).map((r) => r.partialFingerprints.primaryLocationLineHash);
}

test('a fingerprint stays when lines move and words change, and tells twins apart', () => {
  const moved = { start: { line: 90, column: 3 }, end: { line: 90, column: 9 } };
  const before = prints([{ file: 'a', id: null, remarks: [remark(), remark()] }]);
  const after = prints([
    { file: 'b', id: null, remarks: [remark({ range: moved, message: 'x' }), remark({ range: moved })] },
  ]);
  expect(after).toEqual(before);
  expect(new Set(before).size).toBe(2);
  expect(prints([{ file: 'a', id: null, remarks: [remark({ path: ['plan', 'power'] })] }])).not.toContain(before[0]);
});

function uri(file: string): string | undefined {
  const [run] = log(writeSarif([{ file, id: null, remarks: [remark()] }], OPTIONS)).runs;
  return run?.artifacts[0]?.location.uri;
}

test('a file outside the folder becomes a file reference', () => {
  expect(uri('/srv/some notes/a.opnote.yaml')).toBe('file:///srv/some%20notes/a.opnote.yaml');
  expect(uri('C:\\notes\\a.opnote.yaml')).toBe('file:///C:/notes/a.opnote.yaml');
  expect(uri('./notes/a.opnote.yaml')).toBe('notes/a.opnote.yaml');
});
