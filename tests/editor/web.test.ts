import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { NoteWindow, launchBrowser } from './support/note-window.ts';
import { sample } from './support/samples.ts';
import { startWebEditor, type WebEditor } from './support/web-editor.ts';

const NAME = 'month-1.opnote.yaml';
// The visit is of the other eye than the operation, which stands in another file.
const visit = sample('sound/routine-right-month-1.opnote.yaml').replace('eye: right', 'eye: left');
const files = {
  [NAME]: visit,
  'operation.opnote.yaml': sample('sound/routine-right.opnote.yaml'),
  'sideport.yaml': sample('sound/sideport.yaml'),
};

let browser: Browser;
let editor: WebEditor;
beforeAll(async () => {
  browser = await launchBrowser();
  editor = await startWebEditor(files);
});
afterAll(async () => {
  await browser.close();
  editor.stop();
});

test('in a web editor without Node, in a folder on no disk and not trusted, a note is checked with its set', async () => {
  const window = await NoteWindow.openOnWeb(browser, editor.address, NAME, visit);
  await window.page.getByText('Restricted Mode').first().waitFor();
  await window.status('Note: 1 error').waitFor();
  const problems = (await (await window.problems()).allTextContents()).join('\n');
  expect(problems).toMatch(/operation\.opnote\.yaml/);

  const hover = await window.hover('refraction: -0.25 / -0.50 x 85', '-0.50');
  expect(hover).toContain('-0.50 D');

  await window.goToEndOf('capsule: clear');
  await window.page.keyboard.press('Enter');
  await window.page.keyboard.type('dic', { delay: 60 });
  await window.suggestions().filter({ hasText: 'dictation' }).first().waitFor();
  await window.close();
});
