import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, FrameLocator } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { NoteWindow, launchBrowser } from './support/note-window.ts';
import { picturePath, sample } from './support/samples.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const department = { 'sideport.yaml': sample('sound/sideport.yaml') };
const routine = sample('sound/routine-right.opnote.yaml');

const page = (window: NoteWindow): FrameLocator =>
  window.page.frameLocator('iframe.webview').frameLocator('iframe#active-frame');

test('a page shows what was computed and from what, and follows the text', async () => {
  const files = { ...department, 'one.opnote.yaml': routine };
  const window = await NoteWindow.open(browser, { files, open: 'one.opnote.yaml' });
  await window.goToEndOf('k2: 44.00 D @ 88');
  await window.page.keyboard.press('Control+K');
  await window.page.keyboard.press('v');
  await page(window).locator('h1', { hasText: 'What was computed' }).waitFor();
  await page(window)
    .getByText(/corneal astigmatism: 0\.50 D/i)
    .first()
    .waitFor();
  expect(await page(window).locator('body').textContent()).toMatch(/lens box.*local policy/);
  await window.page.screenshot({ path: picturePath('computed') });

  // The keyboard is back with the text.
  await window.cursorIsOn('k2: 44.00 D @ 88');
  for (let back = 0; back < '0 D @ 88'.length; back += 1) await window.page.keyboard.press('ArrowLeft', { delay: 60 });
  await window.page.keyboard.press('Backspace', { delay: 60 });
  await window.page.keyboard.type('7');
  await window.line('k2: 44.70 D @ 88').waitFor();
  await page(window)
    .getByText(/corneal astigmatism: 1\.20 D/i)
    .first()
    .waitFor();
  await window.close();
});

test('a scanned label gives the fields of the lens, each to be confirmed', async () => {
  // The label of the sample's own lens; what it says is not in the note yet.
  const scanned = '(01)09521234543213(17)290400(10)L2024K(21)7700412';
  const before = routine.replace(/^ {2}(serial|lot|expiry|udi|maker|model): .*\n/gm, (line, _field, at: number) =>
    at > routine.indexOf('\nlens:') ? '' : line,
  );
  const text = before.replace('\nlens:\n', '\nlens:\n  udi: \n').replace('status: final', 'status: draft');
  const files = { ...department, 'one.opnote.yaml': text };
  const window = await NoteWindow.open(browser, { files, open: 'one.opnote.yaml' });
  await window.goToEndOf('  udi: ');
  await window.paste(scanned);
  await window.act('from the scanned label');
  await window.line('serial:').waitFor();
  const saved = await window.saved();
  expect(saved).toContain(`  udi: ${scanned}\n`);
  for (const field of ['maker: Halden Optics', 'model: HX-1', 'serial: "7700412"', 'lot: L2024K', 'expiry: 2029-04']) {
    expect(saved).toContain(`  ${field} # proposed from the label`);
  }
  await window.close();
});

test('a new note is made from what is usual, and its places are walked by Tab', async () => {
  const window = await NoteWindow.open(browser, { files: department, open: 'sideport.yaml' });
  await window.command('Sideport: New note');
  await window.page.locator('.tab.active', { hasText: '.opnote.yaml' }).waitFor();
  await window.line('record: operation').waitFor();
  await window.page.keyboard.type('OP-1', { delay: 40 });
  await window.nextPlace();
  await window.nextPlace();
  await window.page.keyboard.type('09:15', { delay: 40 });
  await window.line('id: OP-1').waitFor();
  await window.line('start: 09:15').waitFor();
  expect(await window.lineText('status:')).toContain('status: draft');
  // The eye is never filled in by the department's habits.
  expect((await window.lineText('eye: ')).trimEnd()).toBe('eye:');
  await window.close();
});

test('a new note gets another name where a text has that of the day, which stays as it is', async () => {
  const now = new Date();
  const day = [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0'));
  const name = `operation-${day.join('-')}`;
  const files = { ...department, [`${name}.opnote.yaml`]: 'Dictated in theatre\n' };
  const window = await NoteWindow.open(browser, { files, open: 'sideport.yaml' });
  await window.command('Sideport: New note');
  await window.page.locator('.tab.active', { hasText: `${name}-2.opnote.yaml` }).waitFor();
  await window.line('record: operation').waitFor();
  expect(readFileSync(join(window.folder, `${name}.opnote.yaml`), 'utf8')).toBe('Dictated in theatre\n');
  await window.close();
});

test('a remark is put right from the keyboard', async () => {
  const text = 'opnote: 1\nrecord: operation\nstatus: draft\nid: OP-1\ndate: 2031-03-14\nurgency: electiv\n';
  const window = await NoteWindow.open(browser, { files: { 'one.opnote.yaml': text }, open: 'one.opnote.yaml' });
  await window.squiggles('error').first().waitFor();
  await window.goToEndOf('urgency: electiv');
  await window.act('elective');
  await window.line('urgency: elective').waitFor();
  expect(await window.saved()).toBe(text.replace('electiv', 'elective'));
  await window.close();
});
