import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { NoteWindow, launchBrowser } from './support/note-window.ts';
import { sample } from './support/samples.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** A signed note asks before it is changed; here all are still being written. */
const unsigned = (name: string): string => sample(`sound/${name}.opnote.yaml`).replace(/\nsigned:\n[\s\S]*$/, '\n');
const files = {
  'sideport.yaml': sample('sound/sideport.yaml'),
  'operation.opnote.yaml': unsigned('routine-right'),
  'month-1.opnote.yaml': unsigned('routine-right-month-1'),
  'correction.opnote.yaml': unsigned('routine-right-correction'),
};
const open = 'operation.opnote.yaml';
const naming = ['operation.opnote.yaml', 'month-1.opnote.yaml', 'correction.opnote.yaml'] as const;

test('the references of an operation are found across the set', async () => {
  const window = await NoteWindow.open(browser, { files, open });
  await window.goToEndOf('id: OP-2025-0102');
  await window.page.keyboard.press('Shift+Alt+F12');
  const found = window.page.locator('.pane-body .monaco-list-row');
  const named = async () => {
    const listed = (await found.allTextContents()).join('\n');
    return naming.filter((name) => listed.includes(name));
  };
  await expect.poll(named, { timeout: 20_000 }).toEqual(naming);
  await window.close();
});

test('an operation gets another id in every file that names it', async () => {
  const window = await NoteWindow.open(browser, { files, open });
  await window.goToEndOf('id: OP-2025-0102');
  await window.page.keyboard.press('F2');
  const input = window.page.locator('.rename-box input');
  await input.fill('OP-2025-0999');
  await window.page.keyboard.press('Enter');
  // The box goes as soon as it is answered, and the names change once all files were read.
  await window.line('id: OP-2025-0999').waitFor();
  await window.command('File: Save All Files');
  const texts = (): readonly string[] => naming.map((name) => readFileSync(join(window.folder, name), 'utf8'));
  await expect.poll(() => texts().filter((text) => text.includes('OP-2025-0999')).length).toBe(naming.length);
  expect(texts().join('\n')).not.toContain('OP-2025-0102');
  await window.close();
});
