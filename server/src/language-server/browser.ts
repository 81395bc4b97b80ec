import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { startNoteServer } from './start-server.ts';

declare const self: DedicatedWorkerGlobalScope;

startNoteServer(createConnection(new BrowserMessageReader(self), new BrowserMessageWriter(self)), {
  // Two turns: a message that has arrived already is taken in between them.
  later: (work) => setTimeout(() => setTimeout(work, 0), 0),
});
