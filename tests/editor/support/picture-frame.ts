import type { Frame, Locator } from 'playwright-core';
import type { NoteWindow } from './note-window.ts';

/** The page inside the picture's panel. */
export async function pictureFrame(window: NoteWindow): Promise<Frame> {
  const inner = window.page.frameLocator('iframe.webview').locator('iframe#active-frame');
  const frame = await (await inner.elementHandle())?.contentFrame();
  if (frame == null) throw new Error('The picture has no page');
  await frame.locator('section svg').first().waitFor();
  return frame;
}

/**
 * The direction, seen on the screen, in which an element lies from the centre of the drawn eye: degrees 0-360,
 * counter-clockwise, 0 on the viewer's right.
 */
export async function directionOnScreen(frame: Frame, element: Locator): Promise<number> {
  const from = await middle(frame.locator('[data-kind=eye] circle.sp-eye').first());
  const to = await middle(element);
  return ((Math.atan2(from.y - to.y, to.x - from.x) * 180) / Math.PI + 360) % 360;
}

async function middle(element: Locator): Promise<{ readonly x: number; readonly y: number }> {
  const box = await element.boundingBox();
  if (box === null) throw new Error('It is not drawn');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}
