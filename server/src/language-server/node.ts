import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { createConnection } from 'vscode-languageserver/node';
import type { Apart } from './apart.ts';
import { diskFiles } from './disk-files.ts';
import { ROUNDS_OF_PRACTICE } from './practice.ts';
import { dateText } from './runtime.ts';
import { startNoteServer } from './start-server.ts';

// Editors other than VS Code start the server with nothing behind its name.
const channels = /^--(stdio|node-ipc|socket|pipe|clientProcessId)/;
if (!process.argv.some((argument) => channels.test(argument))) process.argv.push('--stdio');

startNoteServer(createConnection(), {
  // Two turns: a message that has arrived already is taken in between them.
  later: (work) => setImmediate(() => setImmediate(work)),
  practice: ROUNDS_OF_PRACTICE,
  files: diskFiles,
  checkPages: () => readFile(join(__dirname, 'check-pages.json'), 'utf8'),
  apart: async () => (require(join(__dirname, 'apart.js')) as { readonly apart: Apart }).apart,
  today: () => dateText(new Date()),
});
