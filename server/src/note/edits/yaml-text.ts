/** Texts that YAML would take for something else when they stand without quotes. */
const indicator = /^[-?:,[\]{}#&*!|>'"%@`]/u;
const number = /^[+-]?(?:\d[\d_]*(?:\.\d*)?(?:e[+-]?\d+)?|\.\d+|0x[\da-f]+|0o[0-7]+|\.inf|\.nan)$/iu;
const keyword = /^(?:true|false|null|~)$/iu;

/** A text as a YAML value on one line. Numbers of an identifier are quoted, so that they stay as they are. */
export function yamlText(text: string, kind: 'value' | 'identifier' = 'value'): string {
  const signed = /^-\d/u.test(text);
  const plain =
    text !== '' &&
    text.trim() === text &&
    (signed || !indicator.test(text)) &&
    !/: |:$| #|[\n\r\t]/u.test(text) &&
    !keyword.test(text) &&
    !(kind === 'identifier' && number.test(text));
  return plain
    ? text
    : `"${text
        .replace(/[\\"]/gu, String.raw`\$&`)
        .replace(/\r?\n/gu, String.raw`\n`)
        .replace(/\t/gu, ' ')}"`;
}

/** A text inside brackets: commas and brackets end it there. */
export function yamlTextInBrackets(text: string): string {
  return /[,[\]{}]/u.test(text) ? `"${text.replace(/[\\"]/gu, String.raw`\$&`)}"` : text;
}

const width = 100;

/** A longer text as a block, indented for a key in the first column: folded when it is one paragraph, else as it is. */
export function yamlBlock(text: string, indent: string, eol: string): string {
  const whole = text.trim();
  if (/[\n\r]/u.test(whole) || / {2}|\t/u.test(whole)) {
    return `|-${whole
      .split(/\r?\n|\r/u)
      .map((line) => `${eol}${line.trim() === '' ? '' : indent + line.trimEnd()}`)
      .join('')}`;
  }
  return `>-${folded(whole)
    .map((line) => `${eol}${indent}${line}`)
    .join('')}`;
}

function folded(text: string): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line !== '' && line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line];
}
