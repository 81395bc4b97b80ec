import { runCommand } from '../../server/src/command-line/run-command.ts';
import {
  FileProblem,
  type Files,
  type FileWriter,
  type FolderEntry,
  type World,
} from '../../server/src/command-line/world.ts';

/** Files in memory, by absolute path, under the folder /notes. */
export class MemoryFiles implements Files {
  readonly content: Map<string, string>;

  constructor(files: Readonly<Record<string, string>>) {
    this.content = new Map(Object.entries(files).map(([name, text]) => [`/notes/${name}`, text]));
  }

  read(file: string): string {
    const text = this.content.get(file);
    if (text === undefined) throw new FileProblem('there is no such file');
    return text;
  }

  bytes(file: string): Uint8Array {
    return new TextEncoder().encode(this.read(file));
  }

  write(file: string, data: string | Uint8Array): void {
    this.content.set(file, text(data));
  }

  create(file: string): FileWriter {
    let written = '';
    return { write: (data) => void (written += text(data)), close: () => this.write(file, written) };
  }

  kind(path: string): 'file' | 'folder' | null {
    if (this.content.has(path)) return 'file';
    const inside = path === '/' ? '/' : `${path}/`;
    return [...this.content.keys()].some((file) => file.startsWith(inside)) ? 'folder' : null;
  }

  list(folder: string): readonly FolderEntry[] {
    const names = new Map<string, FolderEntry['kind']>();
    for (const file of this.content.keys()) {
      if (!file.startsWith(`${folder}/`)) continue;
      const [name, ...rest] = file.slice(folder.length + 1).split('/');
      if (name !== undefined) names.set(name, rest.length > 0 ? 'folder' : 'file');
    }
    return [...names].map(([name, kind]) => ({ name, kind }));
  }
}

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

function text(data: string | Uint8Array): string {
  return typeof data === 'string' ? data : new TextDecoder().decode(data);
}

/** Runs a command line on files in memory. */
export async function run(words: readonly string[], files: Files, over: Partial<World> = {}): Promise<Ran> {
  let out = '';
  let err = '';
  const code = await runCommand(words, {
    stdin: () => Promise.resolve(''),
    stdout: { write: (data) => void (out += text(data)), colour: false },
    stderr: { write: (data) => void (err += text(data)), colour: false },
    files,
    folder: '/notes',
    now: () => new Date(2025, 1, 1),
    ...over,
  });
  return { code, out, err };
}
