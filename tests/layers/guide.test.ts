import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const root = new URL('../../', import.meta.url);
const guide = readFileSync(new URL('DEVELOPERS.md', root), 'utf8');
const FOLDERS = /^(?:schemas|server|client|tests|samples|docs)(?:\/[\w./-]*)?$/u;

/** Every path of the repository that the guide names, and the folders it names beside `server/src/note/…`. */
function namedPaths(): string[] {
  const rows = guide.split('\n').filter((line) => line.startsWith('| `server/src/note/'));
  const beside = rows.flatMap((row) =>
    [...(row.split('|')[1] ?? '').matchAll(/`(\w+)`/gu)].map(([, name]) => `server/src/note/${name}`),
  );
  const written = [...guide.matchAll(/`([^`\s]+)`/gu)]
    .map(([, name]) => name ?? '')
    .filter((name) => FOLDERS.test(name));
  return [...new Set([...written, ...beside])];
}

describe('the contributor’s guide', () => {
  test.each(namedPaths())('%s exists', (path) => {
    expect(existsSync(new URL(path, root))).toBe(true);
  });

  test('names the folders of the core', () => {
    expect(namedPaths().length).toBeGreaterThan(30);
  });
});
