import { element, plain } from '../../picture/svg.ts';
import type { Audit } from '../audit.ts';
import { groupBy } from '../group-by.ts';
import type { Figure } from '../figure.ts';
import { chartPlot } from '../plots/chart-plot.ts';
import { doubleAnglePlot } from '../plots/double-angle-plot.ts';
import { errorHistogram } from '../plots/error-histogram.ts';
import { funnelPlot } from '../plots/funnel-plot.ts';
import { sharesOverTime } from '../plots/shares-over-time.ts';
import { CAUTIONS, chaptersOf, makingsOf, setSentences, type Chapter, type Making } from './chapters.ts';
import { displayCases, displayGroup, displayInterval, displayValue } from './display.ts';
import { STYLE } from './style.ts';

const OVERDUE_SHOWN = 100;

const paragraph = (words: string): string => element('p', {}, plain(words));
const list = (items: readonly string[]): string =>
  element('ul', {}, ...items.map((item) => element('li', {}, plain(item))));

const cell = (words: string, attributes = {}): string => element('td', attributes, plain(words));

function row(figure: Figure, number: number): string {
  return element(
    'tr',
    {},
    element('th', { scope: 'row' }, plain(figure.label)),
    cell(displayGroup(figure.group)),
    cell(displayValue(figure), { class: 'number' }),
    cell(displayInterval(figure), { class: 'number' }),
    cell(displayCases(figure), { class: 'number' }),
    cell(figure.suppressed ? '' : String(figure.missing), { class: 'number' }),
    cell(String(number), { class: 'number' }),
  );
}

function making({ number, method, source, cautions, benchmarks }: Making): string {
  const compare = benchmarks.map(({ value, source: from }) => `To compare: ${value} (${from}).`);
  const words = [`${method}.`, `Source: ${source}.`, ...compare, ...cautions].join(' ');
  return element('li', { value: number }, plain(words));
}

function figureTable(figures: readonly Figure[]): string {
  if (figures.length === 0) return paragraph('Nothing to report.');
  const makings = makingsOf(figures);
  const head = ['Figure', 'Group', 'Value', '95 % interval', 'n', 'Missing', 'Made by'].map((words) =>
    element('th', { scope: 'col' }, words),
  );
  return (
    element(
      'table',
      {},
      element('thead', {}, element('tr', {}, ...head)),
      element('tbody', {}, ...figures.map((figure) => row(figure, makings.numberOf(figure)))),
    ) + element('ol', { class: 'makings' }, ...makings.list.map(making))
  );
}

function drawing(svg: string, caption: string): string {
  return element('figure', {}, svg, element('figcaption', {}, plain(caption)));
}

const overTime = (audit: Audit, name: string): readonly Figure[] =>
  audit.figures.filter((figure) => figure.name === name && Object.keys(figure.group).join() === 'period');

/** The drawings of a chapter; each says in its caption what it rests on. */
function drawings(chapter: Chapter, audit: Audit): readonly string[] {
  const { funnel, charts, predictionErrors, doubleAngle } = audit.plots;
  switch (chapter.id) {
    case 'rupture':
      return [
        ...(funnel === null
          ? []
          : [
              drawing(
                funnelPlot(funnel),
                'Rate adjusted for case mix (observed over expected, model scaled to the set, times the rate of the whole set). Limits: exact binomial, interpolated (Spiegelhalter, Stat Med 2005;24:1185-202). Dashed 95 %, dotted 99.8 %.',
              ),
            ]),
        ...groupBy(charts, (chart) => chart.surgeon).map(([surgeon, own]) =>
          drawing(
            chartPlot(surgeon, own),
            `Surgeon ${surgeon}, ${own[0]?.chart.path.length ?? 0} operations in order of time: risk-adjusted cumulative sum for doubled odds (Steiner et al., Biostatistics 2000;1:441-52), threshold 4.5 (from memory of the paper; set it by the false alarms you can bear). It restarts after a signal (marked).`,
          ),
        ),
      ];
    case 'refraction':
      return [
        ...(predictionErrors.length === 0
          ? []
          : [
              drawing(
                errorHistogram(predictionErrors),
                `${predictionErrors.length} eyes with a prediction for the lens implanted and a refraction after the operation.`,
              ),
            ]),
        drawing(
          sharesOverTime('Eyes with a refraction after the operation, by period', [
            { name: 'followed', figures: overTime(audit, 'refraction-followed') },
            { name: 'within 0.50 D', figures: overTime(audit, 'within-0.50') },
            { name: 'within 1.00 D', figures: overTime(audit, 'within-1.00') },
          ]),
          'Share of operations followed with a refraction, and of these within 0.50 D and 1.00 D of the prediction.',
        ),
      ];
    case 'incisions':
      return [
        element('div', { class: 'squares' }, ...doubleAngle.map(doubleAnglePlot)),
        paragraph(
          'Double-angle plots: every dot an eye, the square the centroid; solid ellipse 95 % of the centroid, dashed ellipse 95 % of single eyes (Hotelling). Meridians are counted from the incision: 90° means steeper across it, that is flatter along it. The angles of the ellipses belong to the plane and are no meridians.',
        ),
      ];
    case 'completeness':
      return [
        drawing(
          sharesOverTime('Completeness of notes by period', [
            { name: 'all elements', figures: overTime(audit, 'completeness') },
          ]),
          'Elements recorded over elements asked for.',
        ),
      ];
    default:
      return [];
  }
}

function overdue(audit: Audit): string {
  if (audit.overdue.length === 0) return '';
  const shown = audit.overdue.slice(0, OVERDUE_SHOWN);
  const head = ['Operation', 'Surgeon', 'Review', 'Due', 'Days over'].map((words) =>
    element('th', { scope: 'col' }, words),
  );
  const rows = shown.map(({ operation, surgeon, what, due, daysOver }) =>
    element(
      'tr',
      {},
      ...[operation, surgeon, what, due, String(daysOver)].map((words) => element('td', {}, plain(words))),
    ),
  );
  const more = audit.overdue.length - shown.length;
  return (
    element('table', {}, element('thead', {}, element('tr', {}, ...head)), element('tbody', {}, ...rows)) +
    (more > 0 ? paragraph(`and ${more} more (all of them with --format json).`) : '')
  );
}

function chapterHtml(chapter: Chapter, audit: Audit): string {
  return element(
    'section',
    { id: chapter.id },
    element('h2', {}, plain(chapter.title)),
    element('p', { class: 'caution' }, plain(chapter.caution)),
    ...drawings(chapter, audit),
    figureTable(chapter.figures),
    chapter.id === 'reviews' ? overdue(audit) : '',
  );
}

/** The audit as one self-contained page: no script, no fetched part, readable on paper and without colour. */
export function auditHtml(audit: Audit): string {
  const found = audit.standOuts.map(({ message, notes }) =>
    notes.length === 0 ? message : `${message} Notes: ${notes.join(', ')}.`,
  );
  const chapters = chaptersOf(audit);
  const body = element(
    'main',
    {},
    element('h1', {}, 'Audit of cataract operations'),
    ...setSentences(audit).map(paragraph),
    element('div', { class: 'caution' }, list(CAUTIONS)),
    element('nav', {}, ...chapters.map(({ id, title }) => `${element('a', { href: `#${id}` }, plain(title))} `)),
    element(
      'section',
      { id: 'stand-out' },
      element('h2', {}, 'What stands out'),
      found.length === 0 ? paragraph('Nothing lies outside what chance would usually leave.') : list(found),
    ),
    ...chapters.map((chapter) => chapterHtml(chapter, audit)),
  );
  const head = element(
    'head',
    {},
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    element('title', {}, 'Audit of cataract operations'),
    element('style', {}, STYLE),
  );
  return `<!doctype html>\n<html lang="en">${head}${element('body', {}, body)}</html>\n`;
}
