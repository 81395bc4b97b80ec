import type { Explanation } from './explain.ts';

/** An explanation as plain lines. */
export function plainExplanation(explanation: Explanation): string {
  return paragraphs(
    explanation,
    (words) => words,
    (words) => words,
  ).join('\n');
}

/** An explanation as Markdown. Words of the note and of the guide never become mark-up. */
export function markdownExplanation(explanation: Explanation): string {
  return paragraphs(explanation, escaped, (words) => `**${escaped(words)}**`).join('\n\n');
}

type Write = (words: string) => string;

function paragraphs(explanation: Explanation, write: Write, strong: Write): readonly string[] {
  const { title, meaning, expects, computed, source, dictated } = explanation;
  return [
    `${strong(title)}: ${write(meaning)}`,
    ...(dictated === undefined ? [] : [write(`Dictated as ${dictated}.`)]),
    ...(expects.length === 0 ? [] : [write(expects.join(' '))]),
    ...computed.flatMap(({ says, rests, cautions }) => [
      ...(says === '' ? [] : [strong(says)]),
      ...(rests === '' ? [] : [write(rests)]),
      ...cautions.map((caution) => write(`Caution: ${caution}`)),
    ]),
    ...(source === undefined ? [] : [write(`Source: ${source}`)]),
  ];
}

export function escaped(words: string): string {
  return words
    .replace(/[\\`*_{}[\]<>#|~!+]/gu, String.raw`\$&`)
    .replace(/^(\s*)([-+])/gu, String.raw`$1\$2`)
    .replace(/^(\s*\d+)([.)])/u, String.raw`$1\$2`);
}
