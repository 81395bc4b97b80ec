import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { chromium, type Browser, type Locator, type Page } from 'playwright-core';
import { inject, onTestFailed, vi } from 'vitest';
import { failurePath } from './samples.ts';

/** Long enough for suggestions to open where there are any. */
const SUGGESTIONS_OPEN_MS = 1500;
const BLANK_IN_VIEW = /\u00a0/g;

const calm = { 'editor.minimap.enabled': false, 'files.exclude': { '.vscode': true } };

export function launchBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--disable-component-update'],
  });
}

export interface WindowOptions {
  /** Files of the folder, by path inside it. */
  readonly files: Readonly<Record<string, string>>;
  /** The file to open. */
  readonly open: string;
  readonly settings?: Readonly<Record<string, unknown>>;
  readonly size?: { readonly width: number; readonly height: number };
}

async function showPage(
  browser: Browser,
  address: string,
  file: string,
  size: WindowOptions['size'] = { width: 1280, height: 800 },
): Promise<Page> {
  const permissions = ['clipboard-read', 'clipboard-write'];
  const context = await browser.newContext({ viewport: size, permissions });
  const page = await context.newPage();
  page.setDefaultTimeout(30_000);
  await page.goto(`${address}payload=${encodeURIComponent(JSON.stringify([['openFile', file]]))}`);
  onTestFailed(async () => {
    await page.screenshot({ path: failurePath(String(Date.now())) });
  });
  return page;
}

/** One window of the editor, used as a person uses it: by keyboard, by mouse, and by looking. */
export class NoteWindow {
  readonly page: Page;
  readonly folder: string;
  readonly #open: string;

  readonly #stored: () => string;

  private constructor(page: Page, folder: string, open: string, stored: () => string) {
    this.page = page;
    this.folder = folder;
    this.#open = open;
    this.#stored = stored;
  }

  static async open(browser: Browser, { files, open, settings, size }: WindowOptions): Promise<NoteWindow> {
    const { authority, folders } = inject('editor');
    const own = mkdtempSync(join(folders, 'set-'));
    const folder = join(own, 'notes');
    const settingsFile = JSON.stringify({ ...calm, ...settings });
    const all = { ...files, '.vscode/settings.json': settingsFile };
    for (const [name, text] of Object.entries(all)) {
      mkdirSync(dirname(join(folder, name)), { recursive: true });
      writeFileSync(join(folder, name), text);
    }
    const file = `vscode-remote://${authority}${join(folder, open)}`;
    const page = await showPage(browser, `http://${authority}/?folder=${encodeURIComponent(folder)}&`, file, size);
    const window = new NoteWindow(page, folder, open, () => readFileSync(join(folder, open), 'utf8'));
    await window.status(/^\s*Note: /).waitFor({ timeout: 60_000 });
    return window;
  }

  /** A window of the editor that runs in the page alone; its files are not on disk. */
  static async openOnWeb(browser: Browser, address: string, open: string, text: string): Promise<NoteWindow> {
    const page = await showPage(browser, `${address}?`, `vscode-vfs://notes/set/${open}`);
    const window = new NoteWindow(page, '/set', open, () => text);
    await window.status(/^\s*Note: /).waitFor({ timeout: 60_000 });
    return window;
  }

  async close(): Promise<void> {
    await this.page.context().close();
  }

  /** The status item of the extension whose text is as given. */
  status(text: string | RegExp): Locator {
    return this.page.locator('#sideport\\.sideport\\.checking', { hasText: text });
  }

  /** The lines of the text that hold the words; blanks count as blanks. */
  line(words: string): Locator {
    const asShown = words.replaceAll(' ', '[ \u00a0]').replaceAll(/[.+*?^$(){}|\\/]/g, String.raw`\$&`);
    return this.page.locator('.editor-instance .view-line', { hasText: new RegExp(asShown) }).first();
  }

  async lineText(words: string): Promise<string> {
    return ((await this.line(words).textContent()) ?? '').replaceAll(BLANK_IN_VIEW, ' ');
  }

  squiggles(kind: 'error' | 'warning' | 'info'): Locator {
    return this.page.locator(`.editor-instance .squiggly-${kind}`);
  }

  codeLens(words: string | RegExp): Locator {
    return this.page.locator('.codelens-decoration a', { hasText: words });
  }

  /** Shows the Problems panel and gives its rows. */
  async problems(): Promise<Locator> {
    const rows = this.page.locator('.markers-panel .monaco-list-row');
    if (!(await this.page.locator('.markers-panel').isVisible())) await this.page.keyboard.press('Control+Shift+M');
    await this.page.locator('.markers-panel').waitFor();
    return rows;
  }

  /** Rests the pointer on the words of a line and gives the text of the hover. */
  async hover(line: string, words: string): Promise<string> {
    await this.goToEndOf(line);
    const spot = this.line(line).locator('span > span', { hasText: words }).last();
    const hover = this.page.locator('.monaco-hover:visible', { hasNotText: 'Loading' }).first();
    // A busy editor may lose the one movement of a mouse that jumps, and it closes a hover when the text moves under the
    // mouse, as it does when the lines above the sections come in: move away and come back until there is one to read.
    for (let tries = 0; tries < 8; tries += 1) {
      await this.page.mouse.move(4, 4);
      await spot.hover();
      const text = await hover.textContent({ timeout: 5000 }).catch(() => null);
      if (text !== null) return text.replaceAll(BLANK_IN_VIEW, ' ');
    }
    throw new Error(`Nothing was shown over ${words}`);
  }

  /** Puts the cursor at the end of the first line that holds the words, as the file stands on disk. */
  async goToEndOf(words: string): Promise<void> {
    const number = this.#storedLines().findIndex((line) => line.includes(words)) + 1;
    await this.page.keyboard.press('Control+G');
    await this.page.locator('.quick-input-widget .quick-input-box input').waitFor();
    await this.page.keyboard.insertText(String(number));
    await this.page.keyboard.press('Enter');
    await this.page.locator('#status\\.editor\\.selection', { hasText: `Ln ${number}, ` }).waitFor();
    await this.page.keyboard.press('End');
  }

  #storedLines(): readonly string[] {
    return this.#stored().split('\n');
  }

  /** Waits until the cursor stands on a line that holds the words. */
  async cursorIsOn(words: string | RegExp): Promise<void> {
    const wanted = this.#storedLines().flatMap((line, index) =>
      (typeof words === 'string' ? line.includes(words) : words.test(line)) ? [index + 1] : [],
    );
    const position = this.page.locator('#status\\.editor\\.selection', {
      hasText: new RegExp(`^\\s*Ln (?:${wanted.join('|')}), `),
    });
    await position.waitFor();
  }

  /** The rows of the open suggestion list. */
  suggestions(): Locator {
    return this.page.locator('.suggest-widget.visible .monaco-list-row');
  }

  /** Goes to the next place of what a completion wrote, as a person does who sees a suggestion in the way. */
  async nextPlace(): Promise<void> {
    const listed = await this.suggestions()
      .first()
      .waitFor({ timeout: SUGGESTIONS_OPEN_MS })
      .then(
        () => true,
        () => false,
      );
    if (listed) await this.page.keyboard.press('Escape');
    await this.page.keyboard.press('Tab');
  }

  /** Takes what can be done at the cursor, once it is offered: right after a change it may not be known yet. */
  async act(title: string): Promise<void> {
    const row = this.page.locator('.action-widget .monaco-list-row', { hasText: title }).first();
    await vi.waitFor(
      async () => {
        await this.page.keyboard.press('Escape');
        await this.page.keyboard.press('Control+.');
        await row.waitFor({ timeout: 2000 });
      },
      { timeout: 30_000, interval: 200 },
    );
    await row.click();
  }

  async command(title: string): Promise<void> {
    await this.page.keyboard.press('F1');
    await this.page.locator('.quick-input-widget .quick-input-box input').waitFor();
    await this.page.keyboard.insertText(title);
    await this.page.locator('.quick-input-list .monaco-list-row.focused', { hasText: title }).waitFor();
    await this.page.keyboard.press('Enter');
  }

  async openFile(name: string): Promise<void> {
    await this.page.keyboard.press('Control+P');
    await this.page.locator('.quick-input-widget .quick-input-box input').waitFor();
    await this.page.keyboard.insertText(name);
    await this.page.locator('.quick-input-list .monaco-list-row.focused', { hasText: name }).waitFor();
    await this.page.keyboard.press('Enter');
    await this.page.locator('.tab.active', { hasText: name }).waitFor();
  }

  async paste(text: string): Promise<void> {
    await this.page.evaluate((words) => navigator.clipboard.writeText(words), text);
    await this.page.keyboard.press('Control+V');
    await this.page.locator('.tab.active.dirty').waitFor();
  }

  /** Saves, and gives what then stands in the file. */
  async saved(): Promise<string> {
    await this.page.keyboard.press('Control+S');
    await this.page
      .locator('.tab:not(.dirty)', { hasText: basename(this.#open) })
      .first()
      .waitFor();
    return this.#stored();
  }
}
