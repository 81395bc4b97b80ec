import type { ProseDocument, ProseSection } from './document.ts';
import { hasContent } from './text.ts';

/** A drawing that stands on the page, as SVG text, with what it shows in words. */
export interface PagePicture {
  readonly svg: string;
  readonly caption: string;
}

const STYLE = `
:root{color-scheme:light dark}
body{max-width:46rem;margin:2rem auto;padding:0 1rem;font:1rem/1.55 Georgia,"Times New Roman",serif;color:#1b1f24;background:#fff}
h1,h2,dt,.computed,figcaption,footer{font-family:system-ui,sans-serif}
h1{font-size:1.5rem;line-height:1.25}
h2{font-size:1.1rem;margin:1.8rem 0 .4rem}
p{margin:.4rem 0}
dl{display:grid;grid-template-columns:max-content 1fr;gap:.2rem 1rem;margin:1rem 0;padding:.8rem 0;border-top:1px solid;border-bottom:1px solid}
dt{font-weight:600}
dd{margin:0}
.notice{border-left:.35rem solid #8f144a;padding:.4rem .8rem;font-weight:600}
.computed{padding:0;list-style:none;font-size:.9rem}
.computed li{padding:.2rem 0 .2rem .8rem;border-left:.2rem solid #17528f}
.caution{display:block;font-style:italic}
.caution::before{content:"Caution: "}
.amended{border-left:.35rem solid #6b4600;padding:.2rem .8rem}
figure{margin:1.5rem 0;break-inside:avoid}
svg{max-width:100%;height:auto}
footer{margin-top:2rem;border-top:1px solid;font-size:.9rem}
@media (prefers-color-scheme:dark){body{color:#e9ecef;background:#16191d}.notice{border-color:#ff93bf}.computed li{border-color:#8fc3ff}.amended{border-color:#efc264}}
@media print{body{max-width:none;margin:0}h2{break-after:avoid}}
`.trim();

/** Nothing on the page may run or be fetched. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'";

/** The note as one page that needs nothing beside itself; well-formed as XML too. */
export function proseAsHtml(document: ProseDocument, pictures: readonly PagePicture[]): string {
  const title = plain(document.title);
  const body = [
    `<h1>${title}</h1>`,
    ...document.notices.map((notice) => `<p class="notice" role="note">${plain(notice)}</p>`),
    `<dl>${document.facts.map(({ label, text }) => `<dt>${plain(label)}</dt><dd>${plain(text)}</dd>`).join('')}</dl>`,
    ...document.sections.filter((section) => hasContent(section)).map((section) => sectionHtml(section)),
    ...pictures.map(({ svg, caption }) => `<figure>${svg}<figcaption>${plain(caption)}</figcaption></figure>`),
    '<footer>',
    ...(document.signatures.length > 0 ? document.signatures : ['Not signed.']).map((line) => `<p>${plain(line)}</p>`),
    ...document.cautions.map((caution) => `<p>${plain(caution)}</p>`),
    '</footer>',
  ];
  return `<!DOCTYPE html>
<html lang="en" xmlns="http://www.w3.org/1999/xhtml"><head><meta charset="utf-8"/><meta http-equiv="Content-Security-Policy" content="${POLICY}"/><meta name="viewport" content="width=device-width, initial-scale=1"/><title>${title}</title><style>${STYLE}</style></head>
<body><main>
${body.join('\n')}
</main></body></html>
`;
}

/** One section as HTML that is also XHTML without a script; other formats use it as narrative. */
export function sectionHtml(section: ProseSection): string {
  return `<section id="${section.id}"><h2>${plain(section.heading)}</h2>${sectionBody(section)}</section>`;
}

/** What stands under the heading of a section. */
export function sectionBody(section: ProseSection): string {
  const computed = section.computed.map(({ name, text, cautions }) => {
    const beside = cautions.map((caution) => `<span class="caution">${plain(caution)}</span>`).join('');
    return `<li>${plain(name)}: ${plain(text)} (computed)${beside}</li>`;
  });
  return [
    ...section.paragraphs.map((paragraph) => `<p>${plain(paragraph)}</p>`),
    computed.length > 0 ? `<ul class="computed">${computed.join('')}</ul>` : '',
    ...section.amended.map((line) => `<p class="amended">${plain(line)}</p>`),
  ].join('');
}

/** Text of a note as text of a page; characters that XML cannot hold become a mark that says so. */
export function plain(text: string): string {
  const allowed = isXmlText(text)
    ? text
    : Array.from(text, (character) => (isXmlText(character) ? character : '\ufffd')).join('');
  return allowed.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}

/** Whether XML 1.0 can hold every character: no control characters but tab and line ends, no half of a pair. */
function isXmlText(text: string): boolean {
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code >= 0xd800 && code <= 0xdfff) {
      if ((text.codePointAt(at) ?? 0) <= 0xffff) return false;
      at += 1;
    } else if ((code < 32 && code !== 9 && code !== 10 && code !== 13) || code >= 0xfffe) return false;
  }
  return true;
}
