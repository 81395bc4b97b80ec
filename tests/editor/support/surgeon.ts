import type { NoteWindow } from './note-window.ts';

/** What the suggestion list shows. */
interface Offered {
  readonly labels: readonly string[];
  readonly focused: number;
}

const POLL_MS = 40;
const SETTLED_LOOKS = 2;
/** A list of fields always opens; for a value there may be none. */
const FIELDS_OPEN_MS = 8000;
const VALUES_OPEN_MS = 2000;
const NUMBERS_OPEN_MS = 600;
/** More arrows than this, and typing on is quicker. */
const MOST_ARROWS = 3;

const LINE = /^(?<indent> *)(?<dash>(?:- )?)(?<key>[\w-]+):(?: (?<value>.*))?$/;
const NUMBER_WITH_UNIT = /^([-+]?\d+(?:\.\d+)?) (?:mm|µm|mmHg|D|s|%|cm|mL\/min)$/;

/**
 * A surgeon who writes a note with the keyboard alone, and looks at the suggestions after every key: takes one with Tab
 * as soon as it is the right one, goes on typing while it is not, and types in full what nobody can suggest.
 */
export class Surgeon {
  /** Keys pressed so far; a key held with another counts as two. */
  keys = 0;
  readonly #window: NoteWindow;
  /** A section that was taken from the list has begun its first line already. */
  #begun = false;

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
      const { indent = '', dash = '', key, value = '' } = LINE.exec(line)?.groups ?? {};
      // A list of sentences is not begun by the list of suggestions; one of fields is.
      const begun = this.#begun && key !== undefined;
      this.#begun = false;
      if (index > 0 && !begun) await this.press('Enter');
      if (key === undefined) await this.type(line);
      else {
        if (dash !== '' && !begun) await this.type(indent + dash);
        await this.#writeField(key, value);
      }
    }
  }

  async #writeField(key: string, value: string): Promise<void> {
    const whole = `${key}: ${value}`;
    const taken = await this.#take([whole, key], key, FIELDS_OPEN_MS);
    if (taken === whole) return;
    // A field that is not in the list is written in full.
    if (taken === undefined) await this.type(value === '' ? ':' : ': ');
    if (value === '') this.#begun = true;
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
    const short = NUMBER_WITH_UNIT.exec(value)?.[1] ?? value;
    await this.#take([value], short, /^\d/.test(value) ? NUMBERS_OPEN_MS : VALUES_OPEN_MS);
  }

  /**
   * Types as little as is needed until the list can give one of the wanted texts, and takes it.
   *
   * @param text what is typed where the list cannot help
   * @returns what was taken; undefined: the text was typed in full
   */
  async #take(wanted: readonly string[], text: string, patience: number): Promise<string | undefined> {
    const isField = patience === FIELDS_OPEN_MS;
    for (let typed = isField ? 1 : 0; typed <= text.length; typed += 1) {
      if (typed > 0) await this.type(text.charAt(typed - 1));
      const offered = await this.#look(typed > 0 && !isField ? NUMBERS_OPEN_MS : patience);
      if (offered === undefined) {
        await this.type(text.slice(typed));
        return undefined;
      }
      const [best] = wanted
        .map((label) => ({ label, arrows: offered.labels.indexOf(label) - offered.focused }))
        .filter(({ label, arrows }) => offered.labels.includes(label) && arrows >= 0 && arrows <= MOST_ARROWS);
      // The list puts a field at its right indentation, so a field is taken from it even where it is short.
      if (best !== undefined && (isField || best.arrows + 1 < text.length - typed)) {
        for (let arrow = 0; arrow < best.arrows; arrow += 1) await this.press('ArrowDown');
        await this.press('Tab');
        return best.label;
      }
    }
    return undefined;
  }

  /** The list once it has stopped changing; undefined where none opens. */
  async #look(patience: number): Promise<Offered | undefined> {
    let last = '';
    let same = 0;
    const end = Date.now() + patience;
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
      const focused = rows.findIndex((row) => row.classList.contains('focused'));
      const labels = rows.map((row) => row.querySelector('.label-name')?.textContent ?? '');
      return { labels, focused: Math.max(0, focused) };
    });
  }
}
