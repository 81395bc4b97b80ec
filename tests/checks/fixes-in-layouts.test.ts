import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Path } from '@sideport/schemas';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import type { TreeNode } from '../../server/src/note/reading/tree.ts';
import type { Edit, Fix, Remark } from '../../server/src/note/remark.ts';
import { reviewNote } from '../../server/src/note/review.ts';
import { commentsIn, laidOut, saidIn, styles } from '../editing/layouts.ts';

const sample = readFileSync(new URL('../../samples/sound/toric-right.opnote.yaml', import.meta.url), 'utf8');

/** Slips that are answered with a fix: one in every other value or so, each time of another kind. */
const slips: readonly ((text: string) => string)[] = [
  (text) => text.replace(/(\d)\.(\d)/u, '$1,$2'),
  (text) => text.replace(/^([a-z]{4}[a-z -]*)$/u, '$1x'),
  (text) => text.replace(/^(\S+) o'clock$/u, '$1'),
  (text) =>
    text.replace(/^(\d+(?:\.\d+)?) (?:mg|mL)\b/u, (all, n: string) =>
      n.includes('.') ? all : all.replace(n, `${n}.0`),
    ),
  (text) => text.replace(/@ \d+$/u, '@ 0'),
];

function slipped(node: TreeNode, counter: { next: number }): TreeNode {
  if (node.kind === 'map')
    return {
      ...node,
      entries: node.entries.map((entry) => {
        const isHead = ['record', 'status', 'opnote', 'text', 'indication', 'findings', 'ring', 'dose'].includes(
          entry.key,
        );
        return isHead || entry.value === null ? entry : { ...entry, value: slipped(entry.value, counter) };
      }),
    };
  if (node.kind === 'list')
    return { ...node, items: node.items.map((item) => (item === null ? null : slipped(item, counter))) };
  counter.next += 1;
  const slip = slips.find((each, at) => each(node.text) !== node.text && (counter.next + at) % 3 === 0);
  return slip === undefined ? node : { ...node, text: slip(node.text) };
}

/** Note with slips, a misspelt field, a list without brackets, a section said to be none, a placeholder, and two gaps. */
function faultyTree(): TreeNode {
  const text = sample
    .replace(/^complications: .*\n/mu, '')
    .replace(/^record: .*\n/mu, '')
    .replace(/^(\s+)kinds: .*$/mu, '$1kinds: topical + intracameral')
    .replace(/^closure:/mu, 'closur:')
    .replace(/^(seat): .*$/mu, '$1: “temporal”')
    .replace(/^ring:\n(?: .*\n)+/mu, '')
    .replace(/^place: .*$/mu, 'place: TBC')
    .replace(/^(  serial): .*$/mu, '$1: 0040719')
    .replace(/dose: 0.3 mL/u, 'dose: 1.0 mL')
    .replace(/at: 110°$/mu, 'at: 4');
  return slipped(readNote(`${text.trimEnd()}\nring: not used\n`).tree.root!, { next: 0 });
}

function applied(text: string, edits: readonly Edit[]): string {
  return edits
    .toSorted((a, b) => b.span.start - a.span.start)
    .reduce((result, { span, text: put }) => result.slice(0, span.start) + put + result.slice(span.end), text);
}

/** The places that say which eye and which lens. */
const EYE_OR_LENS = /^(?:lens|plan\.lens|plan\.spare-lens|safety\.lens-verified)(?:\.|$)|(?:^|\.)(?:which-)?eye$/u;

const nameOf = (path: Path): string => path.filter((step) => typeof step === 'string').join('.');

/** What is wrong with the note after a fix; empty when nothing is. */
function faultsAfter(text: string, remark: Remark, fix: Fix): string[] {
  const after = applied(text, fix.edits);
  const [was, is] = [saidIn(text), saidIn(after)];
  // Without its list positions, since a value becomes a list of values.
  const own = nameOf(remark.path);
  const isOther = (value: string) => {
    const name = value.slice(0, value.indexOf('=')).replace(/\[\d+\]/gu, '');
    return name !== own && !name.startsWith(`${own}.`);
  };
  const lost =
    remark.check === 'unknown-field' ? [] : was.values.filter((value) => isOther(value) && !is.values.includes(value));
  const comments = commentsIn(after).map((comment) => comment.split(' | ')[0]);
  return [
    ...(after === text ? ['nothing changed'] : []),
    ...is.faults,
    ...lost.map((value) => `lost: ${value}`),
    ...commentsIn(text)
      .map((comment) => comment.split(' | ')[0])
      .filter((comment) => !comments.includes(comment))
      .map((comment) => `lost: # ${comment}`),
    ...(is.values.length < was.values.length ? ['fewer values'] : []),
    ...(fix.safety === 'safe' && EYE_OR_LENS.test(own) ? [`a safe fix of ${own}`] : []),
  ];
}

describe.each(Object.entries(styles))('a faulty note laid out with %s', (_, style) => {
  const text = laidOut(faultyTree(), style);
  const { remarks } = reviewNote(text, { today: '2031-03-20' });
  const fixes = remarks.flatMap((remark) => remark.fixes.map((fix) => ({ remark, fix })));

  it('gets fixes of many kinds, after each of which all that was written is still there', () => {
    expect(saidIn(text).faults).toEqual([]);
    const kinds = new Set(fixes.map(({ remark }) => remark.check));
    expect([...kinds]).toEqual(expect.arrayContaining(['decimal-comma', 'unknown-word']));
    const wrong = fixes.flatMap(({ remark, fix }) => {
      const faults = faultsAfter(text, remark, fix);
      return faults.length === 0 ? [] : [{ check: remark.check, path: nameOf(remark.path), title: fix.title, faults }];
    });
    expect(wrong).toEqual([]);
  });
});

it('fixes of every kind are met', () => {
  const met = Object.values(styles).flatMap((style) =>
    reviewNote(laidOut(faultyTree(), style), { today: '2031-03-20' }).remarks.flatMap(({ check, fixes }) =>
      fixes.map(() => check),
    ),
  );
  expect(new Set(met)).toEqual(
    new Set([
      'axis-written-zero',
      'clock-hour-or-degrees',
      'complications-not-recorded',
      'decimal-comma',
      'expected-list',
      'expected-section',
      'identifier-without-quotes',
      'number-in-quotes',
      'placeholder-left',
      'record-kind-missing',
      'unknown-field',
      'unknown-word',
      'unreadable-value',
      'unsafe-decimal-in-dose',
    ]),
  );
});
