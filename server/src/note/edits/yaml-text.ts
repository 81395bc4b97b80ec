/** What cannot begin a text without quotes. */
const INDICATOR = /^(?:[?:,[\]{}#&*!|>'"%@`]|-(?!\d)|\.{3}$)/u;
/** What would end a text without quotes, or be lost at its ends; what no line can hold. */
// oxlint-disable-next-line no-control-regex -- control characters are what is looked for
const BREAK = /: |:$| #|^\s|\s$|[\u0000-\u001F\u007F-\u009F\u2028\u2029\uFEFF\uD800-\uDFFF]/u;
const IN_BRACKETS = /[,[\]{}]/u;
const NULL_OR_TRUTH = /^(?:true|false|null|~)$/iu;
/** What other programs read as a number or a truth value; an identifier is neither. */
const NUMBER = /^[+-]?(?:\d[\d_]*(?:\.\d*)?(?:e[+-]?\d+)?|\.\d+|0x[\da-f]+|0o[0-7]+|\.inf|\.nan)$/iu;
const TRUTH = /^(?:yes|no|on|off|y|n)$/iu;

/** Where and as what a text is written. */
export interface Writing {
  /** An identifier that is made of digits stays in quotes, so that it stays as it is. */
  readonly as?: 'value' | 'identifier';
  /** Within brackets or braces, which commas and brackets would end. */
  readonly inBrackets?: boolean;
}

/** A text as a YAML value on one line: in quotes where it would be read as something else without them. */
export function yamlText(text: string, { as = 'value', inBrackets = false }: Writing = {}): string {
  const plain =
    text !== '' &&
    !INDICATOR.test(text) &&
    !BREAK.test(text) &&
    !NULL_OR_TRUTH.test(text) &&
    !(inBrackets && IN_BRACKETS.test(text)) &&
    !(as === 'identifier' && (NUMBER.test(text) || TRUTH.test(text)));
  return plain ? text : yamlQuoted(text);
}

/** A text in double quotes, which keep every text as it is. What JSON writes, YAML reads. */
export function yamlQuoted(text: string): string {
  return JSON.stringify(text);
}

const WIDTH = 100;

/** A longer text as a block, each line indented: folded when it is one paragraph, else as it is. */
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
    if (line !== '' && line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line];
}
