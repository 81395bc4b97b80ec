import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { NoteWindow, launchBrowser } from './support/note-window.ts';
import { picturePath, sample } from './support/samples.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const NAME = 'one.opnote.yaml';
const sound = sample('sound/long-eye-ring.opnote.yaml');
const head = 'opnote: 1\nrecord: operation\nstatus: draft\nid: OP-1\ndate: 2031-03-14\neye: left\n';

const openNote = (text: string): Promise<NoteWindow> =>
  NoteWindow.open(browser, { files: { [NAME]: text }, open: NAME });

test('completion writes a section with its fields at the right indentation', async () => {
  const window = await openNote(head);
  await window.goToEndOf('eye: left');
  await window.page.keyboard.press('Enter');
  await window.page.keyboard.type('incis', { delay: 60 });
  const row = window.suggestions().filter({ hasText: 'incisions …' });
  await row.waitFor();
  await window.page.locator('#status\\.editor\\.indentation', { hasText: 'Spaces: 2' }).waitFor();
  await window.page.screenshot({ path: picturePath('completion') });
  await row.click();
  await window.line('width:').waitFor();
  const [kind, at, width] = ['main', 'temporal', '2.2'];
  await window.page.keyboard.type(kind, { delay: 60 });
  await window.nextPlace();
  await window.page.keyboard.type(at, { delay: 60 });
  await window.nextPlace();
  await window.page.keyboard.type(width, { delay: 60 });
  await window.page.keyboard.press('Escape');
  const saved = await window.saved();
  expect(saved.slice(head.length)).toMatch(/^incisions:\n {2}- kind: main\n {4}at: temporal\n {4}width: 2\.2 mm\n/);
  await window.close();
});

test('Tab on an empty line goes to the indentation that the line wants, and elsewhere is the usual Tab', async () => {
  const window = await openNote(`${head}incisions:\n`);
  await window.goToEndOf('incisions:');
  const writeLine = async (line: string): Promise<void> => {
    await window.page.keyboard.press('Enter', { delay: 60 });
    await window.page.keyboard.press('Tab', { delay: 60 });
    await window.page.keyboard.type(line, { delay: 60 });
  };
  await writeLine('- kind: main');
  await writeLine('at: temporal');
  await window.page.keyboard.press('Escape');
  await window.page.keyboard.press('Tab');
  expect(await window.saved()).toBe(`${head}incisions:\n  - kind: main\n    at: temporal  \n`);
  await window.close();
});

test('the hover over a value shows what was computed from it, by which method and source', async () => {
  const window = await openNote(sound);
  const hover = await window.hover('k2: 44.50 D @ 95', '44.50');
  expect(hover).toMatch(/corneal astigmatism/i);
  expect(hover).toContain('1.25 D');
  expect(hover).toMatch(/source/i);
  await window.page.screenshot({ path: picturePath('hover') });
  await window.close();
});

test('a computed value beside a line follows the number it depends on', async () => {
  const window = await openNote(sound);
  await window.goToEndOf('k2: 44.50 D @ 95');
  await window.line('k2: 44.50 D @ 95').getByText('1.25 D').first().waitFor();
  for (let back = 0; back < ' D @ 95'.length; back += 1) await window.page.keyboard.press('ArrowLeft');
  for (let digit = 0; digit < '4.50'.length; digit += 1) await window.page.keyboard.press('Backspace');
  await window.page.keyboard.type('5.25');
  await window.page.keyboard.press('Escape');
  await window.line('k2: 45.25 D @ 95').getByText('2.00 D').first().waitFor();
  expect(await window.lineText('k2: 45.25 D @ 95')).not.toContain('1.25 D');
  await window.close();
});

test(
  'a whole note typed by keyboard, line by line with Enter, is exactly that note',
  { timeout: 900_000 },
  async () => {
    const window = await openNote('');
    await window.page.locator('.editor-instance .view-lines').click();
    for (const line of sound.split('\n').slice(0, -1)) {
      await window.page.keyboard.type(line);
      await window.page.keyboard.press('Enter');
    }
    expect(await window.saved()).toBe(sound);
    await window.status('Note: no remarks').waitFor();
    await window.close();
  },
);

test('a whole note pasted is exactly that note', async () => {
  const window = await openNote('');
  await window.page.locator('.editor-instance .view-lines').click();
  await window.paste(sound);
  await window.status('Note: no remarks').waitFor();
  expect(await window.saved()).toBe(sound);
  await window.close();
});
