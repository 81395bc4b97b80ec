import * as vscode from 'vscode';
import { dictate } from './dictate.ts';
import { registerCommand } from './guard.ts';
import { indentBlankLine } from './indent-blank-line.ts';
import { applyIndentationSettings } from './indentation-settings.ts';
import { newNote } from './new-note.ts';
import { NoteClient, type MakeClient } from './note-client.ts';
import { Pages } from './pages.ts';
import { PicturePanel } from './picture/picture-panel.ts';
import { answerForFiles } from './set-files.ts';
import { proposeAgain, proposeBehindFields } from './proposals.ts';
import { StatusItem } from './status-item.ts';

/** Everything of the extension that does not depend on how the server is run. */
export async function activateWith(context: vscode.ExtensionContext, make: MakeClient): Promise<void> {
  const client = new NoteClient(make);
  const pages = new Pages(client);
  const picture = new PicturePanel(client, context.extensionUri);
  context.subscriptions.push(
    client,
    pages,
    picture,
    new StatusItem(client),
    proposeBehindFields(),
    registerCommand('sideport.newNote', () => newNote(client), 'The note could not be made.'),
    registerCommand(
      'sideport.explainCheck',
      (check) => pages.explain(check),
      'The page of this check could not be shown.',
    ),
    registerCommand(
      'sideport.showComputed',
      (note) => pages.showComputed(note),
      'The computed values could not be shown.',
    ),
    registerCommand('sideport.showProse', (note) => pages.showProse(note), 'The note could not be shown as prose.'),
    registerCommand('sideport.showPicture', () => picture.show(), 'The picture could not be shown.'),
    registerCommand('sideport.dictate', dictate, 'The dictation could not be started.'),
    registerCommand('sideport.restart', () => client.restart(), 'Checking could not be started again.'),
    registerCommand('sideport.proposeAgain', proposeAgain, 'Nothing could be proposed.'),
    registerCommand('sideport.indentBlankLine', indentBlankLine, 'The line could not be indented.'),
  );
  answerForFiles(client, context.extensionUri);
  applyIndentationSettings();
  await client.start();
}
