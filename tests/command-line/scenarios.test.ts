import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { MemoryFiles, run, type Ran } from '../checking/memory-world.ts';

// A scenario is one page: files, a command, and everything it says and leaves behind (vitest -u writes the lower half).
const folder = 'tests/command-line/scenarios';

interface Scenario {
  readonly title: string;
  readonly files: Readonly<Record<string, string>>;
  readonly stdin: string;
  readonly command: string;
}

test.each(readdirSync(folder))('%s', async (name) => {
  const scenario = read(readFileSync(`${folder}/${name}`, 'utf8'));
  const files = new MemoryFiles(scenario.files);
  const before = new Map(files.content);
  const [program, ...words] = scenario.command.split(' ');
  expect(program).toBe('sideport');
  const ran = await run(words, files, { stdin: async () => scenario.stdin, now: () => new Date(2026, 2, 20) });
  const written = [...files.content].filter(([file, text]) => before.get(file) !== text);
  await expect(write(scenario, ran, written)).toMatchFileSnapshot(`scenarios/${name}`);
});

function read(page: string): Scenario {
  const [title = '', ...parts] = page.split(/^== /mu);
  const files: Record<string, string> = {};
  let stdin = '';
  let command = '';
  for (const part of parts) {
    const end = part.indexOf('\n');
    const head = part.slice(0, end);
    const body = part.slice(end + 1).trimEnd();
    if (head.startsWith('file ')) files[head.slice('file '.length)] = `${body}\n`;
    else if (head === 'stdin') stdin = `${body}\n`;
    else if (head.startsWith('$ ')) command = head.slice('$ '.length);
  }
  return { title: title.trim(), files, stdin, command };
}

function write({ title, files, stdin, command }: Scenario, ran: Ran, written: readonly (readonly [string, string])[]) {
  const parts = Object.entries(files).map(([file, text]) => `== file ${file}\n${text}\n`);
  if (stdin !== '') parts.push(`== stdin\n${stdin}\n`);
  parts.push(`== $ ${command}\n\n`, `== ends with ${ran.code}\n\n`);
  if (ran.out !== '') parts.push(`== stdout\n${ran.out}\n`);
  if (ran.err !== '') parts.push(`== stderr\n${ran.err}\n`);
  for (const [file, text] of written) parts.push(`== written ${file.replace('/notes/', '')}\n${text}\n`);
  return `${title}\n\n${parts.join('')}`.trimEnd().concat('\n');
}
