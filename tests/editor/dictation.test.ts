import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { NoteWindow, launchBrowser } from './support/note-window.ts';
import { picturePath } from './support/samples.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const note = `opnote: 1
record: operation
status: draft
id: OP-1
date: 2031-03-14
eye: left
dictation: >-
  Left eye. Lens plus twenty one in the bag, well centred.
  Gorbel frobnicated.
`;

test('what was dictated is written as proposals, which are confirmed and declined one by one and can be undone', async () => {
  const window = await NoteWindow.open(browser, { files: { 'one.opnote.yaml': note }, open: 'one.opnote.yaml' });
  await window.goToEndOf('  Left eye.');
  await window.act('Write what was dictated');
  await window.line('power: +21 D # proposed from the dictation: “plus twenty one”').waitFor();
  const written = await window.saved();
  expect(written).toContain('\n  placed: capsular bag # proposed from the dictation: “in the bag”\n');
  expect(written.endsWith(note.slice(note.indexOf('dictation:')))).toBe(true);
  await window.page.screenshot({ path: picturePath('dictation') });

  await window.goToEndOf('power: +21 D');
  await window.act('Confirm this value');
  await window.line('“plus twenty one”').waitFor({ state: 'hidden' });
  expect(await window.saved()).toBe(written.replace(' # proposed from the dictation: “plus twenty one”', ''));

  await window.goToEndOf('placed: capsular bag');
  await window.act('Decline this proposal');
  await window.line('placed:').waitFor({ state: 'hidden' });
  const declined = await window.saved();
  expect(declined).not.toContain('placed:');
  expect(declined).toContain('  power: +21 D\n');

  for (let back = 0; back < 2; back += 1) await window.page.keyboard.press('Control+Z', { delay: 200 });
  await window.line('“plus twenty one”').waitFor();
  expect(await window.saved()).toBe(written);
  await window.close();
});
