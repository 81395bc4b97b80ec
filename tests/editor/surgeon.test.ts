import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { NoteWindow, launchBrowser } from './support/note-window.ts';
import { sample } from './support/samples.ts';
import { Surgeon } from './support/surgeon.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const department = sample('sound/sideport.yaml');
/** The label of the box is scanned before what it says is written. */
const UDI = /^ {2}udi: .*\n/m;
const scannedFirst = (text: string): string =>
  text.replace(UDI, '').replace(/^ {2}serial: /m, `${UDI.exec(text)?.[0] ?? ''}$&`);

/** The note to be written: a usual operation, without the comments and blank lines that a sample has for its readers. */
const lines = scannedFirst(sample('sound/routine-right.opnote.yaml'))
  .split('\n')
  .filter((line) => line.trim() !== '' && !line.trimStart().startsWith('#'));

test('a surgeon writes a complete final note with at most 40 % of its keystrokes', { timeout: 900_000 }, async () => {
  const files = { 'sideport.yaml': department, 'one.opnote.yaml': '' };
  const window = await NoteWindow.open(browser, { files, open: 'one.opnote.yaml' });
  await window.page.locator('.editor-instance .view-lines').click();
  const surgeon = new Surgeon(window);
  await surgeon.write(lines);
  const finished = lines.join('\n');
  // Tidying writes the units out. A list still open, or a busy editor, may take the key: press it again, and count it.
  for (let tries = 0; tries < 4; tries += 1) {
    await surgeon.press('Escape');
    await surgeon.press('Control+Shift+I');
    await window.page.waitForTimeout(3000);
    if ((await window.saved()).trimEnd() === finished) break;
  }
  await expect.poll(async () => (await window.saved()).trimEnd(), { timeout: 20_000 }).toBe(finished);
  await window.status('Note: no remarks').waitFor();
  const share = surgeon.keys / finished.length;
  console.log(`${surgeon.keys} keys for ${finished.length} characters: ${(share * 100).toFixed(1)} %`);
  expect(share).toBeLessThanOrEqual(0.4);
  await window.close();
});
