import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { complete } from '../../server/src/note/editing/complete.ts';
import type { Proposal } from '../../server/src/note/editing/proposal.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import { seeded } from '../robustness/mutate.ts';
import { laidOut, saidIn, styles } from './layouts.ts';
import { choose, labelsAt } from './mark.ts';

const samples = new URL('../../samples/sound/', import.meta.url);
const notes = readdirSync(samples)
  .filter((file) => file.endsWith('.opnote.yaml'))
  .map((file) => readNote(readFileSync(new URL(file, samples), 'utf8')).tree.root!);

/** How the line at the cursor was begun. */
const BEGUN = ['', '', 'c', 're', 'la', '- ', '- k', '- ov', 'x y'];
const PLACES = 16;

/** Values without their places in lists, which a new entry shifts. */
const without = (values: readonly string[]) => values.map((value) => value.replace(/\[\d+\](?=.*=)/gu, '[]'));

function afterChoice(text: string, { insert, replace, snippet }: Proposal): string {
  const written = snippet === true ? insert.replace(/\$\{\d+(?::([^}]*))?\}|\$\d+/gu, '$1') : insert;
  const eol = text.includes('\r\n') ? '\r\n' : '\n';
  return text.slice(0, replace.start) + written.replaceAll('\n', eol) + text.slice(replace.end);
}

/** What is wrong with the text after a proposal was chosen. */
function faultsAfter(base: string, begun: string, after: string): readonly string[] {
  const [was, is] = [saidIn(base), saidIn(after)];
  const there = new Set(without(is.values));
  const lost = without(was.values).filter((value) => !there.has(value) && !value.endsWith('='));
  // Words that begin no field make a line unreadable before anything is chosen.
  return [...lost.map((value) => `lost: ${value}`), ...(saidIn(begun).faults.length === 0 ? is.faults : [])];
}

describe.each(Object.entries(styles))('in a note laid out with %s', (_, style) => {
  it('every proposal on a new line leaves all that was written', () => {
    const random = seeded(Object.values(styles).indexOf(style) + 1);
    const below = (count: number) => Math.floor(random() * count);
    const wrong: unknown[] = [];
    let tried = 0;
    for (let place = 0; place < PLACES; place++) {
      const base = laidOut(notes[below(notes.length)]!, style);
      const eol = base.includes('\r\n') ? '\r\n' : '\n';
      const lines = base.split(eol);
      const at = 1 + below(lines.length - 1);
      const begun = ' '.repeat(below(8)) + BEGUN[below(BEGUN.length)]!;
      const before = `${lines.slice(0, at).join(eol)}${eol}`;
      const text = `${before}${begun}${eol}${lines.slice(at).join(eol)}`;
      // Within a text of several lines, a further line is a part of it.
      if (saidIn(text.replace(begun, begun.replace(/\S/gu, ' '))).values.join('\n') !== saidIn(base).values.join('\n'))
        continue;
      const proposals = complete({ reading: readNote(text), surroundings: {} }, before.length + begun.length);
      const some = proposals.filter((__, index) => index % Math.ceil(proposals.length / 5) === 0);
      tried += some.length;
      for (const proposal of some) {
        const faults = faultsAfter(base, text, afterChoice(text, proposal));
        if (faults.length > 0)
          wrong.push({ around: lines.slice(at - 2, at + 2), begun, label: proposal.label, faults });
      }
    }
    expect(wrong).toEqual([]);
    if (style.braces !== 'all') expect(tried).toBeGreaterThan(2);
  });
});

const head = 'opnote: 1\nrecord: operation\n';

describe('above a dash', () => {
  const list = `${head}incisions:\n- kind: main\n  width: 2.4 mm\n`;

  it('a field in its column would end the list, and is not proposed', () => {
    const labels = labelsAt(`${list} re‸\n- kind: side-port\n`);
    expect(labels).not.toContain('ring');
    expect(labels).toContain('plane');
  });

  it('nor between a field and the first dash of its list', () => {
    const labels = labelsAt(`${head}preop:\n  counselling:\n  ‸\n  - glare\n  pressure: 15 mmHg\n`);
    expect(labels).not.toContain('pupil');
    expect(labelsAt(`${head}preop:\n  counselling: ‸\n  - glare\n`)).toEqual([]);
  });

  it('an entry begun in another column is put right', () => {
    const text = `${head}incisions:\n- ‸\n  - kind: side-port\n`;
    expect(choose(text, 'kind')).toBe(`${head}incisions:\n  - kind: \n  - kind: side-port\n`);
    const words = `${head}difficulty:\n      - sm‸\n  - deep set eye\n`;
    expect(saidIn(choose(words, 'small pupil')).faults).toEqual([]);
  });
});

describe('where a second document would begin', () => {
  it.each([`${head}eye: left\n...\n‸`, `‸\n---\n${head}`])('nothing is proposed: %j', (text) => {
    expect(labelsAt(text)).toEqual([]);
  });
});

it('a whole section whose places are passed over can still be read', () => {
  const { values, faults } = saidIn(choose(`${head}‸`, 'antisepsis …').replace(/‹\d›/gu, ''));
  expect(faults).toEqual([]);
  expect(values).toContain('antisepsis.strength=');
});
