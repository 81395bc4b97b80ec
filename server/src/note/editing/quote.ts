/** An identifier that other programs would read as a number, or that YAML would cut, stands in quotes. */
export function quotedWhereNeeded(text: string): string {
  const plain =
    /^[A-Za-z0-9][\w./+-]*(?: [\w./+-]+)*$/u.test(text) && !/^[+-]?(?:0\d|\d+\.?\d*(?:e[+-]?\d+)?$|0x)/iu.test(text);
  return plain ? text : `"${text.replace(/[\\"]/gu, String.raw`\$&`)}"`;
}
