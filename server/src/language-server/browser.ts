import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { dateText } from './runtime.ts';
import { startNoteServer } from './start-server.ts';

declare const self: MessagePort;

startNoteServer(createConnection(new BrowserMessageReader(self), new BrowserMessageWriter(self)), {
  // Two turns: a message that has arrived already is taken in between them.
  later: (work) => setTimeout(() => setTimeout(work, 0), 0),
  today: () => dateText(new Date()),
});
