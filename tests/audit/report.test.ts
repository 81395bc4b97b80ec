import { describe, expect, test } from 'vitest';
import { validateXML } from 'xmllint-wasm';
import { audit } from '../../server/src/note/audit/audit.ts';
import { EMPTY_PARTIAL } from '../../server/src/note/audit/partial.ts';
import { displayInterval, displayValue, NOT_SHOWN } from '../../server/src/note/audit/report/display.ts';
import { auditHtml } from '../../server/src/note/audit/report/html.ts';
import { auditText } from '../../server/src/note/audit/report/text.ts';
import { makeYear } from '../../tools/year/make-year.ts';
import { AS_OF, factsOfNotes } from './year.ts';

const result = audit(factsOfNotes(makeYear({ operations: 240 })), { asOf: AS_OF });
const html = auditHtml(result);
const text = auditText(result);
const svgs = [...html.matchAll(/<svg[\s\S]*?<\/svg>/g)].map(([svg]) => svg);

describe('the page', () => {
  test('is one file: no script, nothing fetched', () => {
    expect(html).not.toMatch(/<script|<link|<img|<iframe|@import|url\(|\son\w+=/i);
    // The only addresses are the name of the drawing language and jumps inside the page.
    expect([...html.matchAll(/(?:src|href)="([^"]*)"/g)].every(([, to]) => to?.startsWith('#'))).toBe(true);
    expect(html.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:/);
  });

  test('needs no colour and prints', () => {
    expect(html.replaceAll('#8888', '')).not.toMatch(
      /(?:fill|stroke|color|background)\s*[:=]\s*"?(?:#[0-9a-f]|rgb|hsl|red|green|blue)/i,
    );
    expect(html).toContain('@media print');
    expect(html).toContain('display: table-header-group');
  });

  test('has plots that are well-formed and say in words what they show', async () => {
    expect(svgs.length).toBeGreaterThan(5);
    for (const svg of svgs) {
      const { valid } = await validateXML({
        xml: [{ fileName: 'plot.svg', contents: svg }],
        schema: [{ fileName: 'any.xsd', contents: ANY_SVG }],
      });
      expect(valid).toBe(true);
      expect(svg).toMatch(/role="img" aria-label="[^"]+"/);
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    }
  });
});

// Says only that the drawing is well-formed and begins as one.
const ANY_SVG = `<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema" targetNamespace="http://www.w3.org/2000/svg">
  <xs:element name="svg"><xs:complexType mixed="true">
    <xs:sequence><xs:any processContents="skip" minOccurs="0" maxOccurs="unbounded"/></xs:sequence>
    <xs:anyAttribute processContents="skip"/>
  </xs:complexType></xs:element>
</xs:schema>`;

describe('every figure', () => {
  test('stands in both reports with its value, its cases, what is missing, method and source', () => {
    for (const figure of result.figures) {
      const value = displayValue(figure);
      expect(text).toContain(figure.label);
      expect(text).toContain(value);
      expect(text).toContain(`Source: ${figure.source}.`);
      expect(html).toContain(`>${value.replaceAll('<', '&lt;')}</td>`);
      expect(figure.method.length).toBeGreaterThan(5);
      expect(Number.isInteger(figure.n) && Number.isInteger(figure.missing)).toBe(!figure.suppressed);
    }
  });

  test('is hidden in both when numbers are small, and nothing of it can be read off a drawing', () => {
    const hidden = result.figures.filter((figure) => figure.suppressed);
    expect(hidden.length).toBeGreaterThan(0);
    expect(hidden.every((figure) => displayValue(figure) === NOT_SHOWN && displayInterval(figure) === '')).toBe(true);
    const surgeons = hidden
      .filter((one) => one.name === 'posterior-capsule-rupture')
      .map((one) => one.group['surgeon']);
    for (const surgeon of surgeons.filter((one) => one !== undefined)) {
      expect(result.plots.charts.map((chart) => chart.surgeon)).not.toContain(surgeon);
      expect(result.plots.funnel?.points.map((point) => point.surgeon) ?? []).not.toContain(surgeon);
    }
  });

  test('is a number a person writes: 180 rather than 0 degrees, no minus before nought', () => {
    expect(`${text}${html}`).not.toMatch(/(?<![\d.])-0(?:\.0+)?(?![\d.])/);
  });
});

test('the cautions stand at the top of both', () => {
  for (const report of [text, html]) {
    expect(report.indexOf('follow local policy and licensed practice')).toBeGreaterThan(0);
    expect(report.indexOf('follow local policy and licensed practice')).toBeLessThan(report.indexOf('What stands out'));
  }
});

test('a set without operations gives an empty audit, not a broken one', () => {
  const empty = audit(EMPTY_PARTIAL, { asOf: AS_OF });
  expect(auditText(empty)).toContain('0 final operations from no date to no date');
  expect(auditHtml(empty)).not.toMatch(/NaN|Infinity|undefined/);
});
