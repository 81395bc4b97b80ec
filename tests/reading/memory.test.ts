import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { expect, test } from 'vitest';
import { readPlainTree } from '../../server/src/note/reading/plain-tree.ts';

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;

/** Bytes on the heap that are still in use. */
function inUse(): number {
  collect();
  return process.memoryUsage().heapUsed;
}

test('a text that was read is let go, whatever its fields are called', () => {
  const size = 100_000;
  const count = 300;
  const before = inUse();
  for (let number = 0; number < count; number++) {
    const text = `a-field-of-its-own-${number}: 1\nfindings: ${'x'.repeat(size)}${number}\n`;
    // As the text of a file arrives: one piece.
    expect(readPlainTree(JSON.parse(JSON.stringify(text)) as string)).toBeDefined();
  }
  expect(inUse() - before).toBeLessThan((count * size) / 10);
});
