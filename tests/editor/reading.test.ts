import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { remarksOnCommandLine } from './support/command-line.ts';
import { NoteWindow, launchBrowser } from './support/note-window.ts';
import { picturePath, sample } from './support/samples.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const sound = sample('sound/long-eye-ring.opnote.yaml');
// A right-sided time-out in a left-sided note, and another power implanted than was planned.
const faulty = sound
  .replace('eye: left\nwhich-eye', 'eye: right\nwhich-eye')
  .replace('  power: +5.5 D\n  pieces', '  power: +6.5 D\n  pieces');

test('a sound note is silent', async () => {
  const window = await NoteWindow.open(browser, { files: { 'one.opnote.yaml': sound }, open: 'one.opnote.yaml' });
  await window.status('Note: no remarks').waitFor();
  expect(await window.squiggles('error').count()).toBe(0);
  await window.close();
});

test('a faulty note shows its remarks in the text and in Problems, and each explains itself', async () => {
  const window = await NoteWindow.open(browser, { files: { 'one.opnote.yaml': faulty }, open: 'one.opnote.yaml' });
  await window.squiggles('error').first().waitFor();

  const expected = remarksOnCommandLine(join(window.folder, 'one.opnote.yaml'));
  expect(expected.length).toBeGreaterThan(1);
  const rows = await window.problems();
  await rows.nth(expected.length).waitFor();
  const shown = (await rows.allTextContents()).join('\n');
  for (const { check, message, range } of expected) {
    expect(shown).toContain(`sideport${check}[Ln ${range.start.line}, Col ${range.start.column}]`);
    expect(shown).toContain(message);
  }
  await window.page.screenshot({ path: picturePath('remarks') });

  const check = expected[0]?.check ?? '';
  await window.page.locator('.markers-panel a.monaco-link', { hasText: check }).first().click();
  const page = window.page.frameLocator('iframe.webview').frameLocator('iframe#active-frame');
  await page.locator('h1', { hasText: check }).waitFor();
  await window.page.screenshot({ path: picturePath('check-explained') });
  await window.close();
});

test('a department file is checked too', async () => {
  const window = await NoteWindow.open(browser, { files: { 'sideport.yaml': 'staf: []\n' }, open: 'sideport.yaml' });
  await window.squiggles('error').first().waitFor();
  expect(await (await window.problems()).allTextContents()).toContainEqual(expect.stringContaining('staf'));
  await window.close();
});

test('a plain YAML file is left alone', async () => {
  const window = await NoteWindow.open(browser, {
    files: { 'one.opnote.yaml': faulty, 'other.yaml': faulty },
    open: 'one.opnote.yaml',
  });
  await window.squiggles('error').first().waitFor();
  await window.openFile('other.yaml');
  await window.line('record: operation').waitFor();
  expect(await window.squiggles('error').count()).toBe(0);
  expect(await window.status('').isVisible()).toBe(false);
  await window.close();
});
