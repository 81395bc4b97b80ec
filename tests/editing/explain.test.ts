import { describe, expect, it } from 'vitest';
import { explainAt } from '../../server/src/note/editing/explain.ts';
import { markdownExplanation, plainExplanation } from '../../server/src/note/editing/explanation-text.ts';
import type { ComputedNote } from '../../server/src/note/computing/computed.ts';
import { atCursor } from './mark.ts';

const nothing: ComputedNote = { values: [], notComputed: [] };

function plainAt(marked: string, computed: ComputedNote = nothing): string | undefined {
  const { around, offset } = atCursor(marked);
  const explanation = explainAt(around.reading, computed, offset);
  return explanation === undefined ? undefined : plainExplanation(explanation);
}

describe('an explanation', () => {
  it('has label, meaning, unit, limits and source, one line each', () => {
    expect(plainAt('opnote: 1\npreop:\n  pres‸sure: 15 mmHg\n')).toBe(
      'Intraocular pressure: Pressure before the operation.\n' +
        'In mmHg; a bare number counts as mmHg. Usually 6 to 30 mmHg. Possible 0 to 90 mmHg.\n' +
        'Source: DICOM (0022,000B)',
    );
  });

  it('says how a word is understood', () => {
    expect(plainAt('opnote: 1\nrecord: operation\nseat: sup‸eriorly\n')).toContain('Understood as “superior”.');
    expect(plainAt('opnote: 1\nrecord: operation\nstatus: fi‸nal\n')).toContain(
      'final: Complete, ready to be signed and sealed.',
    );
  });

  it('says what a section has and how it is said not to exist', () => {
    expect(plainAt('opnote: 1\ncompli‸cations: none\n')).toContain(
      'A list; each entry has what, when, extent, action, account, told.',
    );
    expect(plainAt('opnote: 1\ncompli‸cations: none\n')).toContain('Where there was none, write none.');
  });

  it('shows computed values with inputs, method, source and cautions beside them', () => {
    const computed: ComputedNote = {
      values: [
        {
          name: 'corneal-astigmatism',
          value: { magnitude: 1.25, axis: 95 },
          unit: 'D',
          label: 'corneal astigmatism',
          inputs: { k1: 43.25, k2: 44.5 },
          inputUnits: { k1: 'D', k2: 'D' },
          inline: true,
          method: 'steep minus flat',
          domain: 'front surface of the cornea',
          source: 'convention',
          path: ['preop', 'biometry', 'k2'],
          span: { start: 0, end: 1 },
          display: '1.25 D @ 95',
          cautions: ['anterior surface only'],
        },
      ],
      notComputed: [
        { name: 'expected-corneal-astigmatism', because: 'no incision is recorded', path: ['preop', 'biometry', 'k2'] },
      ],
    };
    const text = plainAt('opnote: 1\npreop:\n  biometry:\n    k2: 44.50‸ D @ 95\n', computed);
    expect(text).toContain(
      'corneal astigmatism: 1.25 D @ 95\nFrom k1 43.25 D, k2 44.5 D. Steep minus flat. Convention.\nCaution: anterior surface only',
    );
    expect(text).toContain('expected corneal astigmatism: not computed because no incision is recorded');
  });

  it('explains the check that an allowance names', () => {
    expect(plainAt('opnote: 1\n# allow unknown-fi‸eld: local habit\nplace: 3\n')).toMatch(/^unknown-field: /);
  });

  it('is short', () => {
    for (const marked of [
      'opnote: 1\ncomorbid‸ity: [glaucoma]\n',
      'opnote: 1\nle‸ns:\n  power: 0 D\n',
      'opnote: 1\nlens:\n  ser‸ial: "1"\n',
    ]) {
      expect(plainAt(marked)?.length).toBeLessThan(400);
    }
  });

  it('never lets words become mark-up', () => {
    const { around, offset } = atCursor('opnote: 1\npreop:\n  pres‸sure: 15 mmHg\n');
    const explanation = explainAt(around.reading, nothing, offset);
    const hostile = { ...explanation!, meaning: 'a *b* [c](d) <e> `f`\n# g', expects: ['- h', '1. i'] };
    expect(markdownExplanation(hostile)).toContain(String.raw`a \*b\* \[c\](d) \<e\> \`f\``);
    expect(markdownExplanation(hostile)).toContain(String.raw`\# g`);
  });
});
