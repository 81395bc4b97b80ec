import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { commands } from '../../server/src/command-line/commands.ts';
import { readOptions } from '../../server/src/command-line/options.ts';

const page = readFileSync(new URL('../../docs/leaving.md', import.meta.url), 'utf8');
const lines = Array.from(page.matchAll(/^sideport (.+)$/gmu), ([, words]) => words ?? '');

/** Words as a shell parts them: by blanks, but not within double quotes. */
const wordsOf = (line: string): readonly string[] =>
  Array.from(line.matchAll(/"([^"]*)"|(\S+)/gu), ([, quoted, bare]) => quoted ?? bare ?? '');

describe('the page about what leaves a note', () => {
  test('shows commands', () => expect(lines.length).toBeGreaterThan(10));
  test.each(lines)('sideport %s: the command and its options exist', async (line) => {
    const [name, ...words] = wordsOf(line);
    const entry = commands.find((command) => command.name === name);
    expect(entry, name).toBeDefined();
    const command = await entry?.load();
    expect(() => readOptions(command?.options ?? {}, words)).not.toThrow();
  });
});
