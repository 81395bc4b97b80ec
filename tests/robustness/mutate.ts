/** A small seeded generator of numbers from 0 to 1 (mulberry32): the same seed gives the same damage. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const pieces = [
  ':',
  ': ',
  '\n',
  '  ',
  '#',
  ' # ',
  '-',
  '- ',
  '"',
  "'",
  '[',
  ']',
  '{',
  '}',
  '|',
  '>',
  '&a ',
  '*a',
  '!!str ',
  '\t',
  '\r',
  '😀',
  '---\n',
  '? ',
  '0',
  ',',
  '%',
  '@',
  '\n\n',
  'x',
  '…',
  ',5',
  ': >-\n      ',
];

/** A value of one line as YAML also allows it: as a block of lines, in quotes, or on the line below its field. */
function otherwiseWritten(line: string, random: () => number): string {
  const match = /^(?<before>[ -]*)(?<key>[\w-]+): (?<value>[^\s#[{|>"'][^#"\\]*)$/u.exec(line);
  if (match?.groups === undefined) return line;
  const { before = '', key = '', value = '' } = match.groups;
  const inner = `\n${' '.repeat(before.length + 4)}`;
  const forms = [
    ` >-${inner}${value}`,
    ` |${inner}${value}`,
    ` |- # so${inner}${value}`,
    `${inner}${value}`,
    ` "${value}"`,
  ];
  return `${before}${key}:${forms[Math.floor(random() * forms.length)] ?? ''}`;
}

/** Up to a dozen values written in another way, none of them damaged. */
function rewritten(text: string, random: () => number): string {
  const lines = text.split('\n');
  for (let i = 0; i < 12; i++) {
    const at = Math.floor(random() * lines.length);
    lines[at] = otherwiseWritten(lines[at] ?? '', random);
  }
  return lines.join('\n');
}

/** Damages a text in one to four places: pieces inserted, stretches deleted, doubled or moved, lines indented. */
export function mutate(text: string, random: () => number): string {
  let damaged = random() < 0.5 ? rewritten(text, random) : text;
  const times = 1 + Math.floor(random() * 4);
  for (let i = 0; i < times; i++) {
    const at = Math.floor(random() * (damaged.length + 1));
    const length = Math.floor(random() * 12);
    const piece = pieces[Math.floor(random() * pieces.length)] ?? '';
    const kind = Math.floor(random() * 5);
    const stretch = damaged.slice(at, at + length);
    if (kind === 0) damaged = damaged.slice(0, at) + piece + damaged.slice(at);
    else if (kind === 1) damaged = damaged.slice(0, at) + damaged.slice(at + length);
    else if (kind === 2) damaged = damaged.slice(0, at) + stretch + damaged.slice(at);
    else if (kind === 3) damaged = damaged.slice(0, at) + piece + damaged.slice(at + 1);
    else {
      const line = damaged.lastIndexOf('\n', at) + 1;
      damaged = damaged.slice(0, line) + (random() < 0.5 ? '  ' : ' ') + damaged.slice(line);
    }
  }
  return damaged;
}
