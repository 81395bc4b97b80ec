import { parseAllDocuments } from 'yaml';
import { yamlQuoted, yamlText } from '../../server/src/note/edits/yaml-text.ts';
import type { TreeNode } from '../../server/src/note/reading/tree.ts';

/** How a note can be laid out; what it says is the same. */
interface Style {
  readonly step?: number;
  readonly unindentedLists?: boolean;
  readonly scalars?: 'block' | 'below' | 'quoted';
  /** A comment behind every value. */
  readonly behind?: boolean;
  /** A comment on a line of its own above every field. */
  readonly above?: boolean;
  readonly braces?: 'sections' | 'entries' | 'lines' | 'all';
  /** Put around the whole. */
  readonly around?: (text: string) => string;
}

export const styles: Readonly<Record<string, Style>> = {
  usual: {},
  'four blanks for each level': { step: 4 },
  'lists in the column of their field': { unindentedLists: true },
  'comments behind values': { behind: true },
  'comments above fields': { above: true },
  'blocks of lines': { scalars: 'block' },
  'blocks of lines with comments': { scalars: 'block', behind: true },
  'values below their fields': { scalars: 'below' },
  'values below their fields, with comments': { scalars: 'below', behind: true },
  'values in quotes': { scalars: 'quoted' },
  'sections in braces': { braces: 'sections' },
  'sections in braces over several lines': { braces: 'lines' },
  'entries in braces': { braces: 'entries', behind: true },
  'all in braces': { braces: 'all' },
  'a byte order mark': { around: (text) => `\uFEFF${text}` },
  'a byte order mark and a heading': { around: (text) => `\uFEFF# Theatre 2\n${text}` },
  'lines that end with CR LF': { behind: true, around: (text) => text.replaceAll('\n', '\r\n') },
  'blocks that end with CR LF': { scalars: 'block', around: (text) => text.replaceAll('\n', '\r\n') },
  'a document start': { around: (text) => `---\n${text}` },
  'a document end': { around: (text) => `---\n${text}...\n` },
  'no line end at the end': { around: (text) => text.trimEnd() },
  'a tail of blank lines and comments': { around: (text) => `${text}\n# signed on paper\n\n` },
};

/** A tree as a text in one of the styles. */
export function laidOut(root: TreeNode, style: Style): string {
  const writer = new Writer(style);
  const text = style.braces === 'all' ? `${writer.inBraces(root)}\n` : writer.block(root, 0).slice(1) + '\n';
  return style.around?.(text) ?? text;
}

class Writer {
  readonly #style: Style;
  #comments = 0;

  constructor(style: Style) {
    this.#style = style;
  }

  /** Lines, each with its line end before it. */
  block(node: TreeNode, column: number): string {
    const indent = `\n${' '.repeat(column)}`;
    if (node.kind === 'map')
      return node.entries
        .map(({ key, value }) => `${this.#above(indent)}${indent}${key}:${this.#behindKey(value, column)}`)
        .join('');
    if (node.kind === 'scalar') return `${indent}${yamlText(node.text)}`;
    return node.items.map((item) => `${indent}-${this.#behindDash(item, column)}`).join('');
  }

  #behindKey(node: TreeNode | null, column: number): string {
    const { braces, unindentedLists, step = 2 } = this.#style;
    if (node === null) return this.#comment();
    if (node.kind === 'scalar') return this.#scalar(node.text, column);
    if (node.kind === 'map' && node.entries.length === 0) return ` {}`;
    if (node.kind === 'list' && node.items.every((item) => item?.kind === 'scalar'))
      return ` ${this.inBraces(node)}${this.#comment()}`;
    if (braces === 'sections' || braces === 'lines') return ` ${this.inBraces(node, column)}`;
    if (node.kind === 'list') return this.block(node, unindentedLists === true ? column : column + step);
    return this.block(node, column + step);
  }

  #behindDash(item: TreeNode | null, column: number): string {
    if (item === null) return '';
    if (item.kind === 'scalar') return this.#scalar(item.text, column);
    if (this.#style.braces === 'entries') return ` ${this.inBraces(item)}${this.#comment()}`;
    return ` ${this.block(item, column + 2).trimStart()}`;
  }

  #scalar(text: string, column: number): string {
    const inner = `\n${' '.repeat(column + 4)}`;
    const isLong = text.length > 120 || /\n/u.test(text);
    switch (this.#style.scalars) {
      case 'block':
        return ` |-${this.#comment()}${inner}${text.trim().replaceAll('\n', inner)}`;
      case 'below':
        return `${this.#comment()}${inner}${yamlText(text)}`;
      case 'quoted':
        return ` ${yamlQuoted(text)}`;
      default:
        return isLong ? ` |-${inner}${text.trim().replaceAll('\n', inner)}` : ` ${yamlText(text)}${this.#comment()}`;
    }
  }

  inBraces(node: TreeNode | null, column?: number): string {
    if (node === null) return '';
    if (node.kind === 'scalar') return yamlText(node.text, { inBrackets: true });
    const parts =
      node.kind === 'list'
        ? node.items.map((item) => this.inBraces(item))
        : node.entries.map(({ key, value }) => `${key}: ${this.inBraces(value)}`);
    const [open, close] = node.kind === 'list' ? ['[', ']'] : ['{', '}'];
    if (column === undefined || this.#style.braces !== 'lines') return `${open}${parts.join(', ')}${close}`;
    const inner = `\n${' '.repeat(column + 4)}`;
    return `${open}${inner}${parts.join(`,${inner}`)},\n${' '.repeat(column + 2)}${close}`;
  }

  #comment(): string {
    return this.#style.behind === true ? ` # told ${this.#comments++}` : '';
  }

  #above(indent: string): string {
    return this.#style.above === true ? `${indent}# told ${this.#comments++}` : '';
  }
}

/** What a text says, read by a reader that knows nothing of notes: “path=value” for each value; and its faults. */
export function saidIn(text: string): { readonly values: readonly string[]; readonly faults: readonly string[] } {
  const documents = parseAllDocuments(text, { schema: 'failsafe', logLevel: 'silent' });
  const [first] = Array.isArray(documents) ? documents : [];
  const values: string[] = [];
  const walk = (value: unknown, path: string): void => {
    if (Array.isArray(value)) value.forEach((item, at) => walk(item, `${path}[${at}]`));
    else if (typeof value === 'object' && value !== null)
      for (const [key, below] of Object.entries(value)) walk(below, path === '' ? key : `${path}.${key}`);
    else values.push(`${path}=${typeof value === 'string' ? value.trim() : ''}`);
  };
  walk(first?.toJS(), '');
  return {
    values,
    faults: [
      ...(first?.errors ?? []).map(({ message }) => message),
      ...(Array.isArray(documents) && documents.length > 1 ? ['a second document'] : []),
    ],
  };
}

/** Every comment with what it stands beside: the values of its line or, alone on its line, the first field below. */
export function commentsIn(text: string): readonly string[] {
  const lines = text.replace(/^\uFEFF/u, '').split(/\r?\n/u);
  return lines.flatMap((line, at) => {
    const comment = /(?:^|\s)#(.*)$/u.exec(line);
    if (comment === null) return [];
    const before = line.slice(0, comment.index).trim();
    const place = before === '' ? (lines.slice(at + 1).find((next) => /^\s*[^#\s]/u.test(next)) ?? '') : before;
    return [`${comment[1]?.trim()} | ${/[\w-]+(?=:)/u.exec(place)?.[0] ?? place.trim()}`];
  });
}
