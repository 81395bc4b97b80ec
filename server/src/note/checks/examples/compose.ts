/**
 * Lays the lines of an example over a note: a field takes the place of the same field, a section is gone through field
 * by field, what the note does not have is added. A first line `without: lens.serial, ring` takes fields away.
 */
export function composeNote(base: string, example: string): string {
  const lines = example.split('\n');
  const without = /^without: (.+)$/u.exec(lines[0] ?? '');
  const kept = without?.[1] === undefined ? base : takeAway(base, without[1].split(', '));
  const added = without === null ? lines : lines.slice(1);
  const last = added.at(-1) === '' ? added.slice(0, -1) : added;
  return `${merge(kept.trimEnd().split('\n'), last, 0).join('\n')}\n`;
}

/** A field with all that is written below it; lines that are no field go with the field before them. */
interface Block {
  readonly key: string;
  readonly lines: readonly string[];
}

function blocksAt(lines: readonly string[], indent: number): Block[] {
  const blocks: { key: string; lines: string[] }[] = [];
  let ahead: string[] = [];
  for (const line of lines) {
    const key = line.startsWith(' '.repeat(indent))
      ? /^([^\s#:-][^:]*):(?:\s|$)/u.exec(line.slice(indent))?.[1]
      : undefined;
    if (key !== undefined) {
      blocks.push({ key, lines: [...ahead, line] });
      ahead = [];
    } else if (line.slice(indent).startsWith('#')) ahead.push(line);
    else (blocks.at(-1)?.lines ?? ahead).push(...ahead.splice(0), line);
  }
  blocks.at(-1)?.lines.push(...ahead);
  return blocks.length === 0 && ahead.length > 0 ? [{ key: '', lines: ahead }] : blocks;
}

function takeAway(note: string, paths: readonly string[]): string {
  const remove = (lines: readonly string[], path: readonly string[], indent: number): string[] =>
    blocksAt(lines, indent).flatMap((block) => {
      if (block.key !== path[0]) return block.lines;
      return path.length === 1
        ? []
        : [...block.lines.slice(0, 1), ...remove(block.lines.slice(1), path.slice(1), indent + 2)];
    });
  return paths.reduce((text, path) => remove(text.trimEnd().split('\n'), path.split('.'), 0).join('\n'), note);
}

function merge(base: readonly string[], example: readonly string[], indent: number): string[] {
  const result = blocksAt(base, indent);
  const met = new Set<string>();
  for (const block of blocksAt(example, indent)) {
    const at = result.findLastIndex((candidate) => candidate.key === block.key);
    const before = result[at];
    if (before === undefined) result.push(block);
    else if (met.has(block.key)) result.splice(at + 1, 0, block);
    else
      result[at] = isSection(before, indent) && isSection(block, indent) ? mergeSection(before, block, indent) : block;
    met.add(block.key);
  }
  return result.flatMap((block) => block.lines);
}

function mergeSection(base: Block, example: Block, indent: number): Block {
  const header = headerOf(example);
  return {
    key: base.key,
    lines: [
      ...example.lines.slice(0, header + 1),
      ...merge(base.lines.slice(headerOf(base) + 1), example.lines.slice(header + 1), indent + 2),
    ],
  };
}

function headerOf({ key, lines }: Block): number {
  return lines.findIndex((line) => line.trimStart().startsWith(`${key}:`));
}

function isSection(block: Block, indent: number): boolean {
  const header = headerOf(block);
  const below = block.lines[header + 1] ?? '';
  return /:(?:\s+#.*)?$/u.test(block.lines[header] ?? '') && new RegExp(`^ {${indent + 2}}[^\\s#-]`, 'u').test(below);
}
