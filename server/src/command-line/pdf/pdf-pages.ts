import { createRequire } from 'node:module';
import { join } from 'node:path';
import Pdf from 'pdfkit';
import drawSvg from 'svg-to-pdfkit';
import type { ProseDocument, ProseSection } from '../../note/prose/document.ts';
import type { PagePicture } from '../../note/prose/html.ts';
import { hasContent } from '../../note/prose/text.ts';
import { stillSvg } from './still-svg.ts';

type Pages = InstanceType<typeof Pdf>;

/** A font that holds the letters of most European languages, arrows and mathematical signs; it travels in the file. */
const FONTS = { plain: 'DejaVuSans.ttf', bold: 'DejaVuSans-Bold.ttf', slanted: 'DejaVuSans-Oblique.ttf' } as const;
const MARGIN = 56;
const INK = '#1b1f24';
const PICTURE_HEIGHT = 640;

/** Finds a file of the font library in the folder of libraries above the program, or above the working folder. */
const fontFile = (name: string): string => {
  const from = typeof __filename === 'string' ? __filename : join(process.cwd(), 'here');
  return createRequire(from).resolve(`dejavu-fonts-ttf/ttf/${name}`);
};

/**
 * The note as a PDF with its text as text and its headings marked for screen readers. The same document and time give
 * the same bytes.
 * @param made when the file says it was made
 */
export async function proseAsPdf(
  document: ProseDocument,
  pictures: readonly PagePicture[],
  made: Date,
): Promise<Uint8Array> {
  const pages = new Pdf({
    size: 'A4',
    margin: MARGIN,
    font: fontFile(FONTS.plain),
    lang: 'en',
    tagged: true,
    displayTitle: true,
    bufferPages: true,
    info: { Title: document.title, CreationDate: made, ModDate: made },
  });
  for (const [name, file] of Object.entries(FONTS)) pages.registerFont(name, fontFile(file));
  const parts: Uint8Array[] = [];
  pages.on('data', (part: Uint8Array) => parts.push(part));
  const ended = new Promise<void>((resolve, reject) => {
    pages.on('end', resolve);
    pages.on('error', reject);
  });
  write(pages, document, pictures);
  footers(pages, document);
  pages.end();
  await ended;
  return joined(parts);
}

function write(pages: Pages, document: ProseDocument, pictures: readonly PagePicture[]): void {
  line(pages, 'H1', 'bold', 16, document.title);
  for (const notice of document.notices) line(pages, 'P', 'bold', 10, notice, { before: 6 });
  pages.moveDown(0.5);
  for (const { label, text } of document.facts) line(pages, 'P', 'plain', 10, `${label}: ${text}`);
  for (const section of document.sections.filter((one) => hasContent(one))) sectionPages(pages, section);
  pages.moveDown(1);
  for (const signature of document.signatures.length > 0 ? document.signatures : ['Not signed.'])
    line(pages, 'P', 'bold', 10, signature);
  for (const caution of document.cautions) line(pages, 'P', 'slanted', 9, caution, { before: 4 });
  for (const picture of pictures) picturePage(pages, picture);
}

function sectionPages(pages: Pages, section: ProseSection): void {
  // A heading does not stand alone at the foot of a page.
  if (pages.y > pages.page.height - MARGIN - 60) pages.addPage();
  line(pages, 'H2', 'bold', 12, section.heading, { before: 10 });
  for (const paragraph of section.paragraphs) line(pages, 'P', 'plain', 10, paragraph, { before: 2 });
  for (const { name, text, cautions } of section.computed) {
    line(pages, 'P', 'plain', 9, `${name}: ${text} (computed)`, { before: 2, indent: 14 });
    for (const caution of cautions) line(pages, 'P', 'slanted', 9, `Caution: ${caution}`, { indent: 28 });
  }
  for (const amended of section.amended) line(pages, 'P', 'bold', 9, amended, { before: 3, indent: 14 });
}

function line(
  pages: Pages,
  role: 'H1' | 'H2' | 'P',
  font: keyof typeof FONTS,
  size: number,
  text: string,
  { before = 0, indent = 0 } = {},
): void {
  pages.y += before;
  pages.addStructure(
    pages.struct(role, {}, () => {
      pages
        .font(font)
        .fontSize(size)
        .fillColor(INK)
        .text(text, MARGIN + indent, pages.y, { width: pages.page.width - 2 * MARGIN - indent, lineGap: 2 });
    }),
  );
}

function picturePage(pages: Pages, { svg, caption }: PagePicture): void {
  pages.addPage();
  const width = pages.page.width - 2 * MARGIN;
  pages.addStructure(
    pages.struct('Figure', { alt: caption }, () => {
      drawSvg(pages, stillSvg(svg), MARGIN, MARGIN, {
        width,
        height: PICTURE_HEIGHT,
        assumePt: true,
        preserveAspectRatio: 'xMidYMin meet',
        fontCallback: (_family, bold) => (bold ? 'bold' : 'plain'),
      });
    }),
  );
  pages.y = MARGIN + PICTURE_HEIGHT + 10;
  line(pages, 'P', 'slanted', 9, caption);
}

function footers(pages: Pages, { title, reference }: ProseDocument): void {
  const { start, count } = pages.bufferedPageRange();
  for (let page = start; page < start + count; page++) {
    pages.switchToPage(page);
    const text = `${title} · ${reference} · page ${page + 1} of ${count}`;
    const place = pages.page.height - MARGIN + 20;
    // Text below the margin would begin a new page.
    pages.page.margins.bottom = 0;
    pages.markContent('Artifact', { type: 'Pagination' });
    pages
      .font('plain')
      .fontSize(8)
      .fillColor(INK)
      .text(text, MARGIN, place, { width: pages.page.width - 2 * MARGIN, align: 'center', lineBreak: false });
    pages.endMarkedContent();
    pages.page.margins.bottom = MARGIN;
  }
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}
