import type { ProseDocument, ProseSection } from './document.ts';

const WIDTH = 88;

/** The note as plain text for the record, in lines of at most 88 characters. */
export function proseAsText(document: ProseDocument): string {
  const label = Math.max(...document.facts.map((fact) => fact.label.length), 0) + 2;
  const blocks = [
    `${document.title}\n${'='.repeat(Math.min(document.title.length, WIDTH))}`,
    ...document.notices.map((notice) => wrapped(notice, '** ', '   ')),
    document.facts.map((fact) => wrapped(fact.text, `${fact.label}:`.padEnd(label), ' '.repeat(label))).join('\n'),
    ...document.sections.filter(hasContent).map(sectionText),
    (document.signatures.length > 0 ? document.signatures : ['Not signed.']).join('\n'),
    document.cautions.map((caution) => wrapped(caution)).join('\n'),
  ];
  return `${blocks.filter((block) => block !== '').join('\n\n')}\n`;
}

export function hasContent(section: ProseSection): boolean {
  return section.paragraphs.length + section.computed.length + section.amended.length > 0;
}

function sectionText(section: ProseSection): string {
  const lines = [
    section.heading,
    '-'.repeat(section.heading.length),
    ...section.paragraphs.map((paragraph) => wrapped(paragraph)),
    ...section.computed.flatMap(({ name, text, cautions }) => [
      wrapped(`${name}: ${text}`, '  computed  ', '            '),
      ...cautions.map((caution) => wrapped(caution, '            ! ', '              ')),
    ]),
    ...section.amended.map((line) => wrapped(line, '  amended   ', '            ')),
  ];
  return lines.join('\n');
}

/** A paragraph in lines that end between words. */
function wrapped(text: string, first = '', rest = ''): string {
  const lines: string[] = [];
  let line = first;
  for (const word of text.split(/[ \n\t]+/u)) {
    const fresh = line === first || line === rest;
    if (!fresh && line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = rest + word;
    } else {
      line += fresh ? word : ` ${word}`;
    }
  }
  // A blank that must not break has done its work here.
  return [...lines, line].join('\n').replaceAll('\u00a0', ' ');
}
