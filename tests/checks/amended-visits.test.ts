import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { MemoryFiles, run } from '../checking/memory-world.ts';

// An amendment is held against the note that it amends, whether that is of an operation or of a visit.
const sample = (name: string): string =>
  readFileSync(new URL(`../../samples/sound/${name}.opnote.yaml`, import.meta.url), 'utf8');
const visit = sample('routine-right-month-1');
const amendment = (lines: string, head = 'eye: right\npatient:\n  ref: P-2204\n'): string =>
  `opnote: 1\nrecord: amendment\nstatus: final\nid: AM-1\namends: FU-2025-0110\nkind: correction\nat: 2025-02-14T08:30+01:00\nby: S-05\n${head}changes:\n${lines}reason: read again\nsigned:\n  - by: S-05\n    meaning: author\n    at: 2025-02-14T08:31+01:00\n`;
const change = (field: string, was: string, now: string): string =>
  `  - field: ${field}\n    was: ${was}\n    now: ${now}\n`;

async function said(text: string, note: string | undefined = visit): Promise<readonly string[]> {
  const files = new MemoryFiles({
    'operation.opnote.yaml': sample('routine-right'),
    'amendment.opnote.yaml': text,
    ...(note === undefined ? {} : { 'visit.opnote.yaml': note }),
  });
  const { out } = await run(['check', 'amendment.opnote.yaml'], files);
  return out.split('\n').filter((line) => line.startsWith('amendment.opnote.yaml:'));
}

describe('an amendment of a visit', () => {
  test('changes a field of a visit without a word', async () => {
    expect(await said(amendment(change('pressure', '14 mmHg', '24 mmHg')))).toEqual([]);
  });
  test.each([
    [change('presure', '14 mmHg', '24 mmHg'), 'Amendment: a follow-up has no field “presure”. Is pressure meant?'],
    [change('lens.serial', '1', '2'), 'Amendment: a follow-up has no field “lens.serial”.'],
    [change('pressure', '14 mmHg', '24 mm'), 'Amendment: pressure: '],
    [
      change('pressure', '15 mmHg', '24 mmHg'),
      'Amendment: pressure is quoted as “15 mmHg”, but the note says “14 mmHg”.',
    ],
    [
      change('pressure', '14 mmHg', '14 mmHg'),
      'Amendment: pressure is “14 mmHg” before and after, so that nothing is changed.',
    ],
  ])('%j', async (lines, message) => {
    const remarks = await said(amendment(lines));
    expect(remarks).toHaveLength(1);
    expect(remarks[0]).toContain(message);
  });
  test.each([
    [
      'eye: left\npatient:\n  ref: P-2204\n',
      'Side: this amendment is about the left eye, but the visit it points to was about the right eye.',
    ],
    [
      'eye: right\npatient:\n  ref: P-2205\n',
      'Patient: this amendment is of P-2205, but the visit it points to is of P-2204.',
    ],
  ])('of another eye or patient is seen: %j', async (head, message) => {
    expect((await said(amendment(change('pressure', '14 mmHg', '24 mmHg'), head))).join('\n')).toContain(message);
  });
  test('before it was signed, or of a draft, is seen', async () => {
    const early = amendment(change('pressure', '14 mmHg', '24 mmHg')).replaceAll('2025-02-14', '2025-02-12');
    expect((await said(early)).join('\n')).toContain('before the note was signed on 2025-02-13T11:20+01:00.');
    const draft = visit.replace('status: final', 'status: draft');
    expect((await said(amendment(change('pressure', '14 mmHg', '24 mmHg')), draft)).join('\n')).toContain(
      'has the status “draft” and can still be corrected itself.',
    );
  });
  test('that is not at hand may change a field of either kind', async () => {
    const known = (await said(amendment(change('pressure', '14 mmHg', '24 mmHg')), '')).join('\n');
    expect(known).not.toContain('has no field');
    expect((await said(amendment(change('presure', '14 mmHg', '24 mmHg')), '')).join('\n')).toContain(
      'Amendment: an operation has no field “presure”.',
    );
  });
});
