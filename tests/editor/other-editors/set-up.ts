import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../..', import.meta.url));

interface Position {
  readonly line: number;
  readonly character: number;
}

export interface Job {
  readonly note: string;
  readonly hover: Position;
  readonly completion: Position;
  readonly edit: { readonly line: number; readonly text: string };
}

/** What an editor showed. */
export interface Seen {
  readonly filetype?: string;
  readonly mode?: string;
  readonly remarks: readonly { readonly line: number; readonly message: string; readonly code?: string }[];
  readonly hover: string;
  readonly completion: readonly string[];
  readonly remarksAfterEdit: readonly { readonly line: number; readonly message: string }[];
  readonly problem?: string;
}

/** The set-up that docs/editors.md gives for an editor, with the placeholder path filled in. */
function setUp(language: string): string {
  const page = readFileSync(join(root, 'docs/editors.md'), 'utf8');
  const block = new RegExp(`\`\`\`${language}\n([\\s\\S]*?)\`\`\``).exec(page)?.[1];
  if (block === undefined) throw new Error(`docs/editors.md has no set-up in ${language}`);
  return block.replaceAll('/path/to/sideport/', root);
}

function here(name: string): string {
  return fileURLToPath(new URL(name, import.meta.url));
}

/** Lays the set-up and the job in a folder of their own and lets the editor do it. */
export function runEditor(language: 'lua' | 'elisp', job: Job): Seen {
  const folder = mkdtempSync(join(tmpdir(), 'other-editor-'));
  const init = join(folder, language === 'lua' ? 'init.lua' : 'init.el');
  const jobFile = join(folder, 'job.json');
  const out = join(folder, 'seen.json');
  writeFileSync(init, setUp(language));
  writeFileSync(jobFile, JSON.stringify({ ...job, out }));
  const [command, args] =
    language === 'lua'
      ? ([
          'nvim',
          [
            '--headless',
            '-u',
            init,
            '-i',
            'NONE',
            '-n',
            '--cmd',
            `let g:job='${jobFile}'`,
            job.note,
            '-c',
            `luafile ${here('neovim.lua')}`,
          ],
        ] as const)
      : (['emacs', ['-q', '--batch', '-l', init, '-l', here('emacs.el')]] as const);
  const run = spawnSync(command, args, { encoding: 'utf8', env: { ...process.env, JOB: jobFile }, timeout: 90_000 });
  try {
    const seen: Seen = JSON.parse(readFileSync(out, 'utf8'));
    return seen;
  } catch {
    throw new Error(`${command} showed nothing:\n${run.stdout}${run.stderr}`);
  } finally {
    rmSync(folder, { recursive: true });
  }
}
