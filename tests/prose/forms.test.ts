import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, test } from 'vitest';
import { validateXML } from 'xmllint-wasm';
import { at, number, operations, typedNotes } from '../export/typed-note.ts';
import { emptyFolder, run, samples, SOUND } from '../export/run.ts';

const show = async (name: string, form: string) => run('show', join(SOUND, name), '--as', form);

/** Text without what only lays it out: line ends, blanks, hyphens at line ends. */
const flat = (text: string): string => text.normalize('NFKC').replaceAll(/[\s\u00ad]+/gu, '');

/** The sentences of a plain text, without headings, facts in columns, and indented lines. */
function paragraphsOf(text: string): readonly string[] {
  const [, , ...blocks] = text.split(/\n{2,}/u);
  const bare = blocks.map((block) => block.replace(/^.+\n[-=]+\n/u, '').replaceAll(/^ {2}.*\n?/gmu, ''));
  return bare.filter((block) => /^[A-Z(]/u.test(block) && !/^[^\n:]+: {2,}/u.test(block));
}

/** What a text extractor finds on the pages of a PDF, foot lines left out. */
async function pdfText(bytes: Uint8Array): Promise<string> {
  const pages = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const texts: string[] = [];
  for (let page = 1; page <= pages.numPages; page++) {
    const { items } = await (await pages.getPage(page)).getTextContent();
    texts.push(
      items
        .map((item) => ('str' in item ? item.str : ''))
        .filter((text) => !/page \d+ of \d+$/u.test(text))
        .join(' '),
    );
  }
  return texts.join(' ');
}

describe.each(samples)('%s', (name) => {
  test('the page, the printed sheet and the Markdown say every word of the plain text', async () => {
    const text = await show(name, 'text');
    const paragraphs = paragraphsOf(text.out);
    const html = (await show(name, 'html')).out;
    const page = flat(
      html
        .replaceAll(/<(?:style|svg)[\s\S]*?<\/(?:style|svg)>/gu, ' ')
        .replaceAll(/<[^>]*>/gu, ' ')
        .replaceAll('&lt;', '<')
        .replaceAll('&gt;', '>')
        .replaceAll('&quot;', '"')
        .replaceAll('&amp;', '&'),
    );
    const markdown = flat(
      (await show(name, 'markdown')).out
        .replaceAll(/\\([\\`*_{}[\]<>#|~!&().+=-])/gu, '$1')
        .replaceAll(/^> |\*/gmu, ''),
    );
    const printed = flat(await pdfText((await show(name, 'pdf')).bytes));
    expect(paragraphs.length).toBeGreaterThan(1);
    for (const paragraph of paragraphs) {
      for (const form of [page, markdown, printed]) expect(form).toContain(flat(paragraph));
    }
  });

  test('the page is well-formed, runs nothing and fetches nothing', async () => {
    const { out } = await show(name, 'html');
    expect(out).not.toMatch(/<(?:script|iframe|object|link|img)\b|\son\w+=|javascript:|(?:src|href)=/iu);
    expect(out).toContain("default-src 'none'");
    const xml = out.replace('<!DOCTYPE html>', '');
    const schema =
      '<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema" targetNamespace="http://www.w3.org/1999/xhtml"><xs:element name="html" type="xs:anyType"/></xs:schema>';
    const { errors } = await validateXML({ xml: [{ fileName: 'page.xml', contents: xml }], schema: [schema] });
    expect(errors).toEqual([]);
  });
});

describe('values', () => {
  test.each(operations.map((note) => [String(note['id']), note] as const))(
    '%s: side, power and numbers of the lens are those of the note',
    async (id, note) => {
      const file = samples[typedNotes.indexOf(note)] ?? '';
      const { out } = await show(file, 'text');
      const text = out.replaceAll(/\s+/gu, ' ');
      expect(text).toContain(String(note['eye']));
      for (const path of ['lens.serial', 'lens.lot', 'lens.model', 'patient.ref']) {
        const value = at(note, path);
        if (typeof value === 'string') expect(text, `${id} ${path}`).toContain(value);
      }
      for (const path of [
        'lens.power',
        'preop.biometry.axial-length',
        'plan.target',
        'capsulotomy.diameter',
        'nucleus.ultrasound-time',
      ]) {
        expect(text, `${id} ${path}`).toContain(number(note, path) ?? '');
      }
    },
  );
});

test('the same note at the same moment gives the same printed bytes', async () => {
  const name = samples[0] ?? '';
  expect(Buffer.compare((await show(name, 'pdf')).bytes, (await show(name, 'pdf')).bytes)).toBe(0);
});

test('a printed sheet has its language, its title and its headings marked for screen readers', async () => {
  const { bytes } = await show('routine-right.opnote.yaml', 'pdf');
  const pages = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const { info } = await pages.getMetadata();
  expect(info).toMatchObject({ Language: 'en', IsAcroFormPresent: false });
  expect(await pages.getMarkInfo()).toMatchObject({ Marked: true });
  const tree = JSON.stringify(await (await pages.getPage(1)).getStructTree());
  expect(tree).toContain('"role":"H1"');
  expect(tree).toContain('"role":"H2"');
});

describe('what the person reads when it does not go', () => {
  test('a folder of many notes', async () => {
    const { code, err } = await run('show', SOUND);
    expect(code).toBe(2);
    expect(err).toMatch(/holds \d+ files; showing takes one note\.\nMore: sideport show --help/u);
  });
  test('a department file', async () => {
    const { code, err } = await run('show', join(SOUND, 'sideport.yaml'));
    expect(code).toBe(2);
    expect(err).toContain('is a department file; showing takes a note.');
  });
  test('a place that cannot be written', async () => {
    const below = join(SOUND, samples[0] ?? '', 'x.txt');
    const { code, err } = await run('show', join(SOUND, samples[0] ?? ''), '--output', below);
    expect(code).toBe(2);
    expect(err).toMatch(/x\.txt: (?:there is no such folder|the system refused it)\./u);
  });
  test('a written file is the same as what is shown', async () => {
    const file = join(emptyFolder(), 'note.txt');
    const name = samples[0] ?? '';
    await run('show', join(SOUND, name), '--output', file);
    expect(readFileSync(file, 'utf8')).toBe((await show(name, 'text')).out);
  });
});
