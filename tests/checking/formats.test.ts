import { describe, expect, test } from 'vitest';
import { makeYear } from '../../tools/year/make-year.ts';
import { MemoryFiles, run } from './memory-world.ts';

const YEAR = Object.fromEntries([...makeYear({ operations: 34 })].map(({ file, text }) => [file, text]));
const files = new MemoryFiles(YEAR);
const FORMATS = ['text', 'json', 'sarif', 'junit', 'github', 'gitlab', 'checkstyle'] as const;

describe('check', () => {
  test.each(FORMATS)('%s: shards put together are the whole report, byte for byte', async (format) => {
    const whole = await run(['check', '.', '--format', format], files);
    expect(whole.code).toBe(1);
    const reports: string[] = [];
    for (const part of [1, 2, 3]) {
      const { out } = await run(['check', '.', '--shard', `${part}/3`, '--format', 'json'], files);
      files.write(`/notes/part-${part}.json`, out);
      reports.push(`part-${part}.json`);
    }
    const merged = await run(['check', '--merge', ...reports.toReversed(), '--format', format], files);
    expect(merged).toEqual(whole);
  });

  test('ends with 0 below the fail level', async () => {
    const silent = await run(['check', 'sideport.yaml', '--format', 'sarif'], files);
    expect(silent).toMatchObject({ code: 0, err: '' });
    expect((await run(['check', '.', '--fail-on', 'never', '--format', 'junit'], files)).code).toBe(0);
  });

  test.each([
    [['--shard', '4/3'], /--shard cannot be 4\/3\. Write part and number of parts, such as 2\/4/],
    [['--jobs', 'many'], /--jobs cannot be many\. Write a number of threads such as 2\./],
    [['--changed-since', 'v1'], /--changed-since needs notes that are kept in git\./],
    [['--merge'], /\.: this is not a report of check --format json\.|there is no such file/],
  ])('wrong use %j says what would be right and ends with 2', async (extra, message) => {
    const { code, out, err } = await run(['check', '.', ...extra], files);
    expect(err).toMatch(message);
    expect({ code, out }).toEqual({ code: 2, out: '' });
  });

  test('the same notes given twice are refused', async () => {
    const { out } = await run(['check', '.', '--format', 'json'], files);
    files.write('/notes/a.json', out);
    files.write('/notes/b.json', out);
    const { code, err } = await run(['check', '--merge', 'a.json', 'b.json'], files);
    expect(code).toBe(2);
    expect(err).toMatch(/stands in a\.json and in b\.json: give each note once\./);
  });
});

describe('audit', () => {
  test('partial results of shards give the same audit as one run', async () => {
    const words = ['--as-of', '2025-02-01', '--suppress-below', '0', '--format', 'json'];
    const whole = await run(['audit', '.', ...words], files);
    expect(whole).toMatchObject({ code: 0, err: '' });
    for (const part of [1, 2]) {
      await run(['audit', '.', '--shard', `${part}/2`, '--format', 'partial', '--output', `part-${part}.json`], files);
    }
    expect(await run(['audit', 'part-2.json', 'part-1.json', ...words], files)).toEqual(whole);
  });

  test.each([
    [[], /Say which notes to audit/],
    [['.', '--shard', '1/2'], /A shard alone is no audit: write it with --format partial/],
    [['.', '--as-of', 'yesterday'], /--as-of cannot be yesterday\. Write a date such as 2031-12-31\./],
    [['.', '--suppress-below', 'few'], /--suppress-below cannot be few\. Write a number such as 5\./],
    [['nowhere'], /nowhere: there is no such file or folder\./],
    [['sideport.json'], /sideport\.json: there is no such file\./],
  ])('wrong use %j says what would be right and ends with 2', async (words, message) => {
    const { code, err } = await run(['audit', ...words], files);
    expect(code).toBe(2);
    expect(err).toMatch(message);
  });

  test('--learn proposes and writes nothing', async () => {
    const before = new Map(files.content);
    const { code, out } = await run(['audit', '.', '--learn'], files);
    expect(code).toBe(0);
    expect(out).toContain('Proposals only: nothing is written.');
    expect(files.content).toEqual(before);
  });
});
