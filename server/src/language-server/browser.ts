import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import type { Dictation } from '../note/dictation/dictation.ts';
import { ROUNDS_OF_PRACTICE } from './practice.ts';
import { dateText } from './runtime.ts';
import { startNoteServer } from './start-server.ts';

declare const self: MessagePort & { readonly sideportDictation?: { readonly dictation: Dictation } };
declare function importScripts(address: string): void;

startNoteServer(createConnection(new BrowserMessageReader(self), new BrowserMessageWriter(self)), {
  // Two turns: a message that has arrived already is taken in between them.
  later: (work) => setTimeout(() => setTimeout(work, 0), 0),
  practice: ROUNDS_OF_PRACTICE,
  dictation: async (address) => {
    if (address === null) return null;
    importScripts(address);
    return self.sideportDictation?.dictation ?? null;
  },
  today: () => dateText(new Date()),
});
