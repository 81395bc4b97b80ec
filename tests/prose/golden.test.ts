import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { run, samples, SOUND } from '../export/run.ts';

/** Read by a person when they were written; a change of words shows here and is read again before it is taken over. */
describe('the prose of every sound sample', () => {
  test.each(samples)('%s', async (name) => {
    const { code, out, err } = await run('show', join(SOUND, name));
    expect(err).toBe('');
    expect(code).toBe(0);
    await expect(out).toMatchFileSnapshot(`golden/${name.replace('.opnote.yaml', '.txt')}`);
  });
});
