import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, test } from 'vitest';

interface Source {
  readonly file: string;
  readonly text: string;
  readonly imports: readonly string[];
}

function sources(folder: string): Source[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(?:ts|mts)$/u.test(name))
    .map((name) => {
      const file = join(folder, name);
      const text = readFileSync(file, 'utf8');
      const imports = [...text.matchAll(/(?:from|import|require)\s*\(?\s*'([^']+)'/gu)].map((match) => match[1] ?? '');
      return { file, text, imports };
    });
}

/** The files that break a rule, each with what it breaks it by. */
function offenders(folder: string, rule: (source: Source) => readonly string[]): string[] {
  return sources(folder).flatMap((source) => rule(source).map((what) => `${source.file}: ${what}`));
}

const pure = ['schemas/src', 'server/src/note'];

describe('architecture invariant: schemas/ and server/src/note/ are pure', () => {
  test.each(pure)('%s imports no editor, no protocol, no platform', (folder) => {
    const forbidden = /^(?:node:|vscode|fs$|path$|os$|crypto$|child_process$|worker_threads$)/u;
    expect(offenders(folder, ({ imports }) => imports.filter((name) => forbidden.test(name)))).toEqual([]);
  });

  test.each(pure)('%s knows no clock and no randomness', (folder) => {
    const forbidden =
      /\bDate\.now\(|new Date\(\)|Math\.random\(|performance\.now\(|\bprocess\.|globalThis\.|(?<![\w.])crypto\.|\brequire\(/gu;
    expect(offenders(folder, ({ text }) => text.match(forbidden) ?? [])).toEqual([]);
  });

  test('server/src/note/ imports neither the language server nor the command line', () => {
    expect(
      offenders('server/src/note', ({ imports }) =>
        imports.filter((name) => /(?:language-server|command-line)\//u.test(name)),
      ),
    ).toEqual([]);
  });
});

test('architecture invariant: calculations know nothing of notes', () => {
  const inside = (source: Source) =>
    source.imports.filter((name) => {
      if (!name.startsWith('.')) return true;
      return !normalize(join(dirname(source.file), name)).startsWith('server/src/note/calculations');
    });
  expect(offenders('server/src/note/calculations', inside)).toEqual([]);
});

test('architecture invariant: only the reading folder knows the yaml package', () => {
  const users = ['schemas/src', 'server/src', 'client/src'].flatMap((folder) =>
    offenders(folder, ({ imports }) => imports.filter((name) => name === 'yaml')),
  );
  expect(users.filter((user) => !user.startsWith('server/src/note/reading/'))).toEqual([]);
});

test('architecture invariant: only the language server knows the protocol', () => {
  const users = ['schemas/src', 'server/src'].flatMap((folder) =>
    offenders(folder, ({ imports }) => imports.filter((name) => name.startsWith('vscode-languageserver'))),
  );
  expect(users.filter((user) => !user.startsWith('server/src/language-server/'))).toEqual([]);
});

test('architecture invariant: the client takes from the server only names and types of our own requests', () => {
  const allowed =
    /server\/src\/language-server\/own-requests\.ts$|@sideport\/server\/language-server\/own-requests\.ts$/u;
  const taken = offenders('client/src', ({ imports }) =>
    imports.filter((name) => /server\//u.test(name) && !name.startsWith('vscode-') && !allowed.test(name)),
  );
  expect(taken).toEqual([]);
});

test('architecture invariant: nothing opens a connection', () => {
  const forbidden = /^(?:node:)?(?:https?|http2|net|tls|dgram|dns)$/u;
  const connections = ['schemas/src', 'server/src', 'client/src'].flatMap((folder) => [
    ...offenders(folder, ({ imports }) => imports.filter((name) => forbidden.test(name))),
    ...offenders(folder, ({ text }) => text.match(/\bfetch\(|XMLHttpRequest|new WebSocket|sendBeacon/gu) ?? []),
  ]);
  expect(connections).toEqual([]);
});
