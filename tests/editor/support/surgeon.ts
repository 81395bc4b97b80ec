import type { NoteWindow } from './note-window.ts';

/** What the suggestion list shows. */
interface Offered {
  readonly labels: readonly string[];
  readonly focused: number;
}

const POLL_MS = 40;
const SETTLED_LOOKS = 2;
const OPENING_MS = 700;
/** More arrows than this, and typing on is quicker. */
const MOST_ARROWS = 3;

/**
 * A surgeon who writes a note with the keyboard alone, and looks at the suggestions after every key: takes one with Tab
 * as soon as it is the right one, goes on typing while it is not, and types in full what nobody can suggest.
 */
export class Surgeon {
  /** Keys pressed so far; a key held with another counts as two. */
  keys = 0;
  readonly #window: NoteWindow;

  constructor(window: NoteWindow) {
    this.#window = window;
  }

  async press(key: string): Promise<void> {
    this.keys += key.split('+').length;
    await this.#window.page.keyboard.press(key);
  }

  async type(text: string): Promise<void> {
    this.keys += text.length;
    await this.#window.page.keyboard.type(text);
  }

  /** Writes the lines of a note, each by its field and its value. The cursor stands at the start of an empty line. */
  async write(lines: readonly string[]): Promise<void> {
    for (const [index, line] of lines.entries()) {
      if (index > 0 && !this.#opened) await this.press('Enter');
      const k = this.keys; await this.#writeLine(line); if (process.env['KEYS']) console.log(this.keys - k, line);
    }
  }

  /** A section that was taken from the list has begun its first line already. */
  #opened = false;

  async #writeLine(line: string): Promise<void> {
    const { indent = '', dash = '', key, value = '' } = LINE.exec(line)?.groups ?? {};
    const begun = this.#opened;
    this.#opened = false;
    if (key === undefined) {
      await this.type(begun ? line.trimStart().replace(/^- /, '') : line);
      return;
    }
    if (dash !== '' && !begun) await this.type(indent + dash);
    // A field that is not in the list is written in full.
    if (!(await this.#take(key, { field: true }))) await this.type(value === '' ? ':' : ': ');
    if (value === '') this.#opened = true;
    else if (value.startsWith('[')) await this.#writeWords(value.slice(1, -1).split(', '));
    else await this.#writeValue(value);
  }

  async #writeWords(words: readonly string[]): Promise<void> {
    await this.type('[');
    for (const [index, word] of words.entries()) {
      if (index > 0) await this.type(', ');
      await this.#writeValue(word);
    }
    await this.type(']');
  }

  async #writeValue(value: string): Promise<void> {
    // A bare number takes the unit of its field when the note is tidied at the end.
    await this.#take(value, { field: false, short: NUMBER_WITH_UNIT.exec(value)?.[1] });
  }

  /** Types as little as is needed until the list can give the wanted text, and takes it. False: it was typed in full. */
  async #take(wanted: string, { field, short = wanted }: { field: boolean; short?: string | undefined }): Promise<boolean> {
    const full = short;
    for (let typed = 0; typed <= full.length; typed += 1) {
      if (typed > 0) await this.type(full.charAt(typed - 1));
      if (field && typed === 0) continue;
      const offered = await this.#look();
      if (offered === undefined) {
        await this.type(full.slice(typed));
        return false;
      }
      const at = offered.labels.indexOf(wanted);
      const arrows = at - offered.focused;
      if (at >= 0 && arrows >= 0 && arrows <= MOST_ARROWS && (field || arrows + 1 < full.length - typed)) {
        for (let arrow = 0; arrow < arrows; arrow += 1) await this.press('ArrowDown');
        await this.press('Tab');
        return true;
      }
    }
    return false;
  }

  /** The list once it has stopped changing; undefined where none opens. */
  async #look(): Promise<Offered | undefined> {
    let last = '';
    let same = 0;
    const end = Date.now() + OPENING_MS;
    while (Date.now() < end) {
      const offered = await this.#read();
      const words = JSON.stringify(offered);
      same = words === last && offered !== undefined ? same + 1 : 0;
      last = words;
      if (same >= SETTLED_LOOKS) return offered;
      await this.#window.page.waitForTimeout(POLL_MS);
    }
    return undefined;
  }

  #read(): Promise<Offered | undefined> {
    return this.#window.page.evaluate(() => {
      const rows = [...document.querySelectorAll('.suggest-widget.visible .monaco-list-row')];
      if (rows.length === 0) return undefined;
      return {
        labels: rows.map((row) => row.querySelector('.label-name')?.textContent ?? ''),
        focused: Math.max(
          0,
          rows.findIndex((row) => row.classList.contains('focused')),
        ),
      };
    });
  }
}

const NUMBER_WITH_UNIT = /^([-+]?\d+(?:\.\d+)?) (?:mm|µm|mmHg|D|s|%|cm|mL\/min)$/;
const LINE = /^(?<indent> *)(?<dash>(?:- )?)(?<key>[\w-]+):(?: (?<value>.*))?$/;
