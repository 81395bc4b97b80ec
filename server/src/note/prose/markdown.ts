import type { ProseDocument, ProseSection } from './document.ts';
import { hasContent } from './text.ts';

/** The note as Markdown (CommonMark); everything that Markdown would take for its own signs is escaped. */
export function proseAsMarkdown(document: ProseDocument): string {
  const blocks = [
    `# ${safe(document.title)}`,
    ...document.notices.map((notice) => `> **${safe(notice)}**`),
    document.facts.map(({ label, text }) => `- **${safe(label)}:** ${safe(text)}`).join('\n'),
    ...document.sections.filter((section) => hasContent(section)).map((section) => sectionMarkdown(section)),
    '---',
    (document.signatures.length > 0 ? document.signatures : ['Not signed.']).map((line) => safe(line)).join('\n\n'),
    document.cautions.map((caution) => `*${safe(caution)}*`).join('\n\n'),
  ];
  return `${blocks.join('\n\n')}\n`;
}

function sectionMarkdown(section: ProseSection): string {
  const computed = section.computed.map(({ name, text, cautions }) =>
    [`- ${safe(name)}: ${safe(text)} (computed)`, ...cautions.map((caution) => `  - *Caution: ${safe(caution)}*`)].join(
      '\n',
    ),
  );
  return [
    `## ${safe(section.heading)}`,
    ...section.paragraphs.map((paragraph) => safe(paragraph)),
    ...(computed.length > 0 ? [computed.join('\n')] : []),
    ...section.amended.map((line) => `> ${safe(line)}`),
  ].join('\n\n');
}

/** Text of a note must not turn into headings, links or raw HTML. */
function safe(text: string): string {
  return text
    .replaceAll('\u00a0', ' ')
    .replace(/\s+/gu, ' ')
    .replace(/[\\`*_{}[\]<>#|~!&]/gu, '\\$&')
    .replace(/^(\d+)([.)])/u, '$1\\$2')
    .replace(/^([-+=])/u, '\\$1');
}
