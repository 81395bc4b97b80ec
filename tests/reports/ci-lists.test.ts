import { Ajv } from 'ajv';
import { describe, expect, test } from 'vitest';
import { writeGithubCommands } from '../../server/src/note/reports/github-commands.ts';
import { writeGitlabCodeQuality } from '../../server/src/note/reports/gitlab-code-quality.ts';
import { shortHash } from '../../server/src/note/reports/fingerprint.ts';
import { EXAMPLE, OPTIONS } from './example.ts';
import { GITLAB_FIELDS } from './schemas.ts';

describe('workflow commands', () => {
  const lines = writeGithubCommands(EXAMPLE).trimEnd().split('\n');

  test('escape what the published rules name: % CR LF in messages, also : and , in properties', () => {
    expect(lines[2]).toBe(
      '::error file=notes/long eye%2C 50 %25 off.opnote.yaml,line=3,endLine=4,title=operated-eye-differs-from-plan' +
        '::Say "right" & left <once>:%0D%0Athe plan, says 100 %25 left.\u0007',
    );
  });

  test('errors come first, and columns only where a remark stays on its line', () => {
    expect(lines.map((line) => line.slice(2, line.indexOf(' ')))).toEqual([
      'error',
      'error',
      'error',
      'warning',
      'notice',
    ]);
    expect(lines[0]).toContain('line=81,endLine=81,col=10,endColumn=16,title=');
  });
});

function entries(): readonly Readonly<Record<string, unknown>>[] {
  const parsed: Record<string, unknown>[] = JSON.parse(writeGitlabCodeQuality(EXAMPLE, OPTIONS));
  return parsed;
}

describe('code quality report', () => {
  const validate = new Ajv().compile(GITLAB_FIELDS);

  test('has the documented fields, and each fingerprint once', () => {
    validate(entries());
    expect(validate.errors).toBeNull();
    expect(new Set(entries().map((e) => e['fingerprint'])).size).toBe(5);
  });

  test('severities map, and a wrong side is critical', () => {
    expect(entries().map((e) => e['severity'])).toEqual(['minor', 'major', 'major', 'critical', 'info']);
  });

  test.each<[string, Record<string, unknown>]>([
    ['an unknown severity', { severity: 'fatal' }],
    ['a path that starts with ./', { location: { path: './a', lines: { begin: 1 } } }],
    ['line 0', { location: { path: 'a', lines: { begin: 0 } } }],
    ['a missing fingerprint', { fingerprint: undefined }],
  ])('%s is rejected', (_what, over) => {
    expect(validate(entries().map((entry, i) => (i === 0 ? { ...entry, ...over } : entry)))).toBe(false);
  });
});

test('the short hash gives the published FNV-1a test values', () => {
  // Fowler, Noll, Vo, Eastlake: draft-eastlake-fnv, 64-bit FNV-1a of "", "a" and "foobar" (from memory).
  expect(['', 'a', 'foobar'].map(shortHash)).toEqual(['cbf29ce484222325', 'af63dc4c8601ec8c', '85944171f73967e8']);
});
