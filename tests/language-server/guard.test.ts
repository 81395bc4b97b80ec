import { CancellationToken } from 'vscode-languageserver';
import { expect, it } from 'vitest';
import { attempt, faultLine, guardWith } from '../../server/src/language-server/guard.ts';

it('answers the fallback of a failing handler, and writes where it failed without a word of the note', async () => {
  const log: string[] = [];
  const guard = guardWith((line) => log.push(line));
  const handler = guard('textDocument/hover', null, () => {
    throw new TypeError('cannot read “P-0417, born 1961\n  at the front desk”');
  });
  await expect(handler({}, CancellationToken.None)).resolves.toBeNull();
  await expect(
    guard('textDocument/completion', [], () => Promise.reject(new Error('P-0417')))({}, CancellationToken.None),
  ).resolves.toEqual([]);
  attempt(
    'textDocument/didOpen',
    (line) => log.push(line),
    () => {
      throw new Error('P-0417');
    },
  );
  expect(log.map((line) => line.split('\n')[0])).toEqual([
    'textDocument/hover failed: TypeError',
    'textDocument/completion failed: Error',
    'textDocument/didOpen failed: Error',
  ]);
  expect(log.join('\n')).not.toMatch(/P-0417|front desk/);
  expect(log[0]).toContain('guard.test.ts');
});

it('does no work for a request that was given up', async () => {
  let worked = false;
  const handler = guardWith(() => undefined)('x', 0, () => {
    worked = true;
    return 1;
  });
  await expect(handler({}, CancellationToken.Cancelled)).resolves.toBe(0);
  expect(worked).toBe(false);
});

it('has words for what is thrown without being an error', () => {
  expect(faultLine('x', 'P-0417')).toBe('x failed');
});
