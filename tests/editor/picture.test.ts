import axe from 'axe-core';
import type { AxeResults } from 'axe-core';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { NoteWindow, launchBrowser, type WindowOptions } from './support/note-window.ts';
import { directionOnScreen, pictureFrame } from './support/picture-frame.ts';
import { picturePath, sample } from './support/samples.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

type Side = 'right' | 'left';
const sides: readonly Side[] = ['right', 'left'];
const seats = ['superior', 'temporal', 'superotemporal'] as const;

const leftEye = sample('sound/long-eye-ring.opnote.yaml');

/** The same operation on either eye, from another seat. */
function noteOf(side: Side, seat: string): string {
  return leftEye.replaceAll(/\b(eye|site-marked): left/g, `$1: ${side}`).replace(/^seat: temporal$/m, `seat: ${seat}`);
}

const nameOf = (side: Side, seat: string): string => `${side}-${seat}.opnote.yaml`;
const cases = sides.flatMap((side) => seats.map((seat) => ({ side, seat })));
const files = Object.fromEntries(cases.map(({ side, seat }) => [nameOf(side, seat), noteOf(side, seat)]));
const open = nameOf('left', 'temporal');
const size = { width: 1200, height: 780 };

async function openWithPicture(options: Partial<WindowOptions> = {}): Promise<NoteWindow> {
  const window = await NoteWindow.open(browser, { files, open, size, ...options });
  await window.line('record: operation').click();
  await window.page.keyboard.press('Control+K');
  await window.page.keyboard.press('i');
  return window;
}

/**
 * ISO 8429:1986, graduated dial scale: 0 at the right of a person facing the eye, counter-clockwise, the same for both
 * eyes. Nasal is therefore 0 for a right eye and 180 for a left one, and temporal opposite.
 */
const nasal = { right: 0, left: 180 } as const;
const temporal = { right: 180, left: 0 } as const;
const between = { right: 135, left: 45 } as const;

/** The surgeon sees the dial turned until the point of the seat is nearest, at the bottom of the screen. */
function expectedOnScreen(position: number, side: Side, seat: (typeof seats)[number]): number {
  const at = { superior: 90, temporal: temporal[side], superotemporal: between[side] }[seat];
  return (position - at + 270 + 720) % 360;
}

const apart = (a: number, b: number): number => Math.abs(((((a - b) % 360) + 540) % 360) - 180);

test('both eyes from three seats stand as the surgeon sees them', async () => {
  const window = await openWithPicture();
  for (const { side, seat } of cases) {
    await window.openFile(nameOf(side, seat));
    const frame = await pictureFrame(window);
    const eye = frame.locator('[data-kind=eye]');
    const seatWords = seat === 'superotemporal' ? 'superotemporal|superior temporal' : seat;
    await frame.locator(`[data-kind=eye][aria-label^="${side === 'right' ? 'Right' : 'Left'} eye"]`).waitFor();
    await eye
      .getByText(new RegExp(`surgeon sits here: (${seatWords})`))
      .first()
      .waitFor();
    const nasalSeen = await directionOnScreen(frame, eye.locator('text', { hasText: /^nasal$/ }));
    const mainSeen = await directionOnScreen(
      frame,
      eye.locator('.sp-part', { hasText: 'Main incision' }).locator(':scope > path').first(),
    );
    expect(apart(nasalSeen, expectedOnScreen(nasal[side], side, seat)), `nasal, ${side}, ${seat}`).toBeLessThan(3);
    expect(apart(mainSeen, expectedOnScreen(temporal[side], side, seat)), `main, ${side}, ${seat}`).toBeLessThan(3);
  }
  await window.close();
});

test('the picture follows the cursor, and a part leads back to its line by mouse and by keyboard', async () => {
  const window = await openWithPicture();
  const frame = await pictureFrame(window);
  const emphasised = frame.locator('[data-kind=eye] .sp-emphasis');
  await window.goToEndOf('technique: continuous curvilinear');
  await emphasised.and(frame.locator('.sp-part', { hasText: 'Capsulotomy' })).waitFor();
  expect(await emphasised.count()).toBe(1);

  // The drawn mark itself, not its line in the list.
  await frame.locator('.sp-part', { hasText: 'Main incision' }).locator(':scope > path').first().click();
  await window.cursorIsOn('- kind: main');
  await frame.locator('.sp-part', { hasText: 'Capsular tension ring' }).focus();
  await window.page.keyboard.press('Enter');
  await window.cursorIsOn(/^ring:|used: yes|size: 13\/11 mm/);
  await window.close();
});

test('what the note does not say is drawn as missing', async () => {
  const text = 'opnote: 1\nrecord: operation\nstatus: draft\nid: OP-1\ndate: 2031-03-14\neye: right\n';
  const window = await openWithPicture({ files: { 'new.opnote.yaml': text }, open: 'new.opnote.yaml' });
  const frame = await pictureFrame(window);
  await frame
    .getByText(/seat not recorded/i)
    .first()
    .waitFor();
  expect(await frame.locator('.sp-part', { hasText: 'Main incision' }).count()).toBe(0);
  await window.close();
});

describe.each([
  ['light', 'Default Light Modern'],
  ['dark', 'Default Dark Modern'],
  ['high-contrast', 'Default High Contrast'],
  ['high-contrast-light', 'Default High Contrast Light'],
])('in a %s theme', (name, theme) => {
  test('a general accessibility checker finds nothing serious in the panel', async () => {
    const window = await openWithPicture({
      files: { 'long-eye.opnote.yaml': leftEye, 'sideport.yaml': sample('sound/sideport.yaml') },
      open: 'long-eye.opnote.yaml',
      settings: { 'workbench.colorTheme': theme },
    });
    const frame = await pictureFrame(window);
    await window.goToEndOf('- kind: main');
    await frame.locator('.sp-emphasis').first().waitFor();
    await frame.evaluate(axe.source);
    const { violations } = await frame.evaluate<AxeResults>('axe.run()');
    const serious = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
    expect(serious.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    await window.page.screenshot({ path: picturePath(`picture-${name}`) });
    await window.close();
  });
});
