import { expect, test } from 'vitest';
import { MemoryFiles, run } from './memory-world.ts';

// A full disk or a crash leaves files with nothing in them: a check that passes them loses a note without a word.
const files = new MemoryFiles({ 'a.opnote.yaml': '', 'sideport.yaml': '' });
const SAID = 'This file is empty. A note begins with “opnote: 1”; was one lost here?';

test('an empty note is an error; an empty department file sets nothing', async () => {
  const { code, out, err } = await run(['check', '.'], files);
  expect([code, err]).toEqual([1, '']);
  expect(out).toBe(
    `a.opnote.yaml:1:1: error: ${SAID} [text-not-readable]\n\n1 error in 1 of 2 files. What a check means: sideport explain CHECK\n`,
  );
});

test.each(['json', 'sarif', 'junit', 'github', 'gitlab', 'checkstyle'])('%s says it', async (format) => {
  const { code, out } = await run(['check', '.', '--format', format], files);
  expect(code).toBe(1);
  expect(out).toContain(SAID);
});

test('an empty standard input is an error as well', async () => {
  const { code, out } = await run(['check', '-'], files);
  expect(code).toBe(1);
  expect(out).toContain(SAID);
});
