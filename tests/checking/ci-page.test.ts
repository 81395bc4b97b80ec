import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import * as z from 'zod';
import { makeYear } from '../../tools/year/make-year.ts';
import { buildCommandLine, folderWith, git } from './built.ts';

// The commands of docs/ci.md in a repository of invented notes, as far as one machine can run them: the actions of
// the services (checkout, upload) are left out, and `npx sideport` is the command line just built.
const page = readFileSync(new URL('../../docs/ci.md', import.meta.url), 'utf8');

function block(start: string): string {
  const at = page.indexOf(start);
  return page.slice(at, page.indexOf('```', at));
}

const step = z.object({ run: z.optional(z.string()) });
const workflow = z.object({ jobs: z.object({ check: z.object({ steps: z.array(step) }) }) });
const job = z.object({ script: z.array(z.string()) });
const pipeline = z.object({ notes: job, report: job });
const hooks = z.object({
  repos: z.array(z.object({ hooks: z.array(z.object({ entry: z.string(), files: z.string() })) })),
});

let built: Awaited<ReturnType<typeof buildCommandLine>>;
let repository: string;
let tools: string;

beforeAll(async () => {
  built = await buildCommandLine();
  repository = folderWith([]);
  renameSync(folderWith(makeYear({ operations: 30 })), join(repository, 'notes'));
  tools = mkdtempSync(join(tmpdir(), 'sideport-tools-'));
  const script = (name: string, body: string): void => {
    writeFileSync(join(tools, name), `#!/bin/sh\n${body}\n`);
    chmodSync(join(tools, name), 0o755);
  };
  script('npx', `shift; exec "${process.execPath}" "${built.program}" "$@"`);
  script('npm', 'exit 0');
  git(repository, 'init', '--quiet', '--initial-branch=main');
  git(repository, 'add', '.');
  git(repository, 'commit', '--quiet', '-m', 'Notes');
  git(repository, 'update-ref', 'refs/remotes/origin/main', 'HEAD');
}, 120_000);

afterAll(() => {
  built.remove();
  rmSync(repository, { recursive: true, force: true });
  rmSync(tools, { recursive: true, force: true });
});

function shell(
  command: string,
  variables: Readonly<Record<string, string>> = {},
): { code: number | null; out: string; err: string } {
  const env = { ...process.env, PATH: `${tools}${delimiter}${process.env['PATH'] ?? ''}`, ...variables };
  const { status, stdout, stderr } = spawnSync('bash', ['-e', '-c', command], {
    cwd: repository,
    env,
    encoding: 'utf8',
  });
  return { code: status, out: stdout, err: stderr };
}

const inside = (file: string): string => join(repository, file);

/** A note that names the wrong eye. */
function makeFaulty(): string {
  const file = 'notes/2024-01/OP-2024-00001.opnote.yaml';
  const text = readFileSync(inside(file), 'utf8');
  const other = /^eye: right$/m.test(text) ? 'left' : 'right';
  writeFileSync(inside(file), text.replace(/^eye: .*$/m, `eye: ${other}`));
  return file;
}

describe('docs/ci.md', () => {
  test('the GitHub workflow runs, marks the changed note and fails', () => {
    const { jobs } = workflow.parse(parse(block('# .github/workflows')));
    const commands = jobs.check.steps.flatMap(({ run }) => run ?? []);
    const file = makeFaulty();
    const [install = '', changed = '', all = '', final = ''] = commands;
    expect(shell(install).code).toBe(0);
    const marked = shell(changed, { GITHUB_BASE_REF: 'main' });
    expect(marked.code).toBe(1);
    expect(marked.out).toMatch(new RegExp(`^::error file=${file},line=\\d+,`, 'm'));
    expect(shell(all).code).toBe(0);
    expect(JSON.parse(readFileSync(inside('sideport.sarif'), 'utf8'))).toMatchObject({ version: '2.1.0' });
    expect(shell(final).code).toBe(1);
    git(repository, 'checkout', '--quiet', '.');
  }, 120_000);

  // The number is valid by its check digit and belongs to nobody: it is printed as an example in many public texts.
  test('no step prints or keeps an identifier', () => {
    const file = makeFaulty();
    writeFileSync(inside(file), readFileSync(inside(file), 'utf8').replace(/^eye: .*$/m, 'eye: 943 476 5919'));
    const { jobs } = workflow.parse(parse(block('# .github/workflows')));
    const { notes } = pipeline.parse(parse(block('# .gitlab-ci.yml')));
    const commands = [...jobs.check.steps.flatMap(({ run }) => run ?? []), ...notes.script];
    const printed = commands.map((command) => {
      const { out, err } = shell(command, { GITHUB_BASE_REF: 'main', CI_NODE_INDEX: '1', CI_NODE_TOTAL: '1' });
      return `${out}${err}`;
    });
    const kept = ['sideport.sarif', 'part-1.json'].map((name) => readFileSync(inside(name), 'utf8'));
    for (const text of [...printed, ...kept]) expect(text).not.toContain('943 476 5919');
    expect(printed.join('')).toContain('“943 *** ****”');
    rmSync(inside('part-1.json'));
    git(repository, 'checkout', '--quiet', '.');
  }, 120_000);

  test('the GitLab jobs run in shards and their reports are put together', () => {
    const { notes, report } = pipeline.parse(parse(block('# .gitlab-ci.yml')));
    for (const index of ['1', '2', '3', '4']) {
      for (const command of notes.script) {
        expect(shell(command, { CI_NODE_INDEX: index, CI_NODE_TOTAL: '4' })).toMatchObject({ code: 0, err: '' });
      }
    }
    const codes = report.script.map((command) => shell(command).code);
    expect(codes.slice(0, 2)).toEqual([0, 0]);
    expect([0, 1]).toContain(codes[2]);
    expect(existsSync(inside('gl-code-quality-report.json'))).toBe(true);
    expect(readFileSync(inside('sideport.xml'), 'utf8')).toContain('<testsuites name="sideport check"');
  }, 120_000);

  test('the hook of git stops a commit with a faulty note and lets a sound one through', () => {
    mkdirSync(inside('.git/hooks'), { recursive: true });
    writeFileSync(inside('.git/hooks/pre-commit'), block('#!/bin/sh'));
    chmodSync(inside('.git/hooks/pre-commit'), 0o755);
    const commit = 'git -c user.name=T -c user.email=t@example.org -c commit.gpgsign=false commit --quiet -m change';
    const file = makeFaulty();
    const stopped = shell(`git add notes && ${commit}`);
    expect(stopped.code).not.toBe(0);
    expect(`${stopped.out}${stopped.err}`).toContain(file);
    git(repository, 'reset', '--quiet', '--hard');
    writeFileSync(inside('notes/sideport.yaml'), `${readFileSync(inside('notes/sideport.yaml'), 'utf8')}# reviewed\n`);
    expect(shell(`git add notes && ${commit}`)).toMatchObject({ code: 0 });
  }, 120_000);

  test('the entry of the pre-commit framework runs on notes and department files, and on nothing else', () => {
    const { repos } = hooks.parse(parse(block('# .pre-commit-config')));
    const [hook] = repos[0]?.hooks ?? [];
    const files = new RegExp(hook?.files ?? '');
    expect(['a/b.opnote.yaml', 'sideport.yaml', 'notes/sideport.yaml'].every((name) => files.test(name))).toBe(true);
    expect(['a.yaml', 'mysideport.yaml', 'b.opnote.yaml.bak'].some((name) => files.test(name))).toBe(false);
    expect(shell(`${hook?.entry ?? ''} notes/sideport.yaml`)).toEqual({ code: 0, out: '', err: '' });
  }, 60_000);
});
