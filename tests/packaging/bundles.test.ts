import { readFileSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

// `npm test` builds and packages first.
const path = (name: string): string => fileURLToPath(new URL(`../../${name}`, import.meta.url));
const sizeOf = (name: string): number => statSync(path(name)).size;

test.each(['server/dist/language-server.cjs', 'server/dist/language-server.worker.js'])(
  '%s is at most 900 kB',
  (name) => {
    expect(sizeOf(name)).toBeLessThanOrEqual(900_000);
  },
);

test('the packaged extension is at most 1 MB', () => {
  expect(sizeOf('client/sideport.vsix')).toBeLessThanOrEqual(1_000_000);
});

const PROGRAMS = ['sideport.cjs', 'seldom.cjs', 'check-worker.cjs', 'language-server.cjs', 'apart.js'];

test.each([...PROGRAMS.map((name) => `server/dist/${name}`), 'client/dist/extension.cjs'])(
  '%s opens no connection to anywhere',
  (name) => {
    const required = readFileSync(path(name), 'utf8').matchAll(/require\("(?:node:)?(https?|http2|dns|tls|dgram)"\)/g);
    expect([...required].map(([, module]) => module)).toEqual([]);
  },
);

test.each(['client/dist/extension.browser.js', 'client/dist/language-server.worker.js'])('%s needs no Node', (name) => {
  const required = readFileSync(path(name), 'utf8').matchAll(/require\("((?!vscode")[^"]+)"\)/g);
  expect([...required].map(([, module]) => module)).toEqual([]);
});

test('a library that went into a bundle is named with its licence', () => {
  const libraries = readFileSync(path('client/dist/LIBRARIES.txt'), 'utf8');
  for (const name of ['yaml', 'zod', 'vscode-languageclient', 'vscode-languageserver']) {
    expect(libraries).toMatch(new RegExp(`^${name} \\d.*\\((?:MIT|ISC)\\)$`, 'm'));
  }
});
