import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { noteServers } from './support/note-server.ts';
import { NoteWindow, launchBrowser } from './support/note-window.ts';
import { sample } from './support/samples.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

test('when nothing checks the note the status bar says so, and a click starts checking again', async () => {
  const files = { 'one.opnote.yaml': sample('sound/long-eye-ring.opnote.yaml') };
  const window = await NoteWindow.open(browser, { files, open: 'one.opnote.yaml' });
  const notChecking = window.status('Not checking');
  // The client starts a server that has died again, until it has died too often; so do those of windows closed before.
  await expect
    .poll(
      async () => {
        for (const server of noteServers()) process.kill(server, 'SIGKILL');
        return (await notChecking.isVisible()) && noteServers().length === 0;
      },
      { timeout: 90_000, interval: 500 },
    )
    .toBe(true);

  await notChecking.click();
  await window.status('Note: no remarks').waitFor();
  expect(noteServers()).toHaveLength(1);
  await window.close();
});
