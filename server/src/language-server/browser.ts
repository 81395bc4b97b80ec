import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import type { Apart } from './apart.ts';
import { ROUNDS_OF_PRACTICE } from './practice.ts';
import { dateText } from './runtime.ts';
import { startNoteServer } from './start-server.ts';

declare const self: MessagePort & { readonly sideportApart?: { readonly apart: Apart } };
declare function importScripts(address: string): void;

startNoteServer(createConnection(new BrowserMessageReader(self), new BrowserMessageWriter(self)), {
  // Two turns: a message that has arrived already is taken in between them.
  later: (work) => setTimeout(() => setTimeout(work, 0), 0),
  practice: ROUNDS_OF_PRACTICE,
  apart: async (address) => {
    if (address === null) return null;
    importScripts(address);
    return self.sideportApart?.apart ?? null;
  },
  today: () => dateText(new Date()),
});
