import { describe, expect, it } from 'vitest';
import { baseAmendment } from '../../server/src/note/checks/examples/base-amendment.ts';
import { baseDepartment } from '../../server/src/note/checks/examples/base-department.ts';
import { runExample } from '../../server/src/note/checks/examples/run-example.ts';
import { allAbouts } from '../../server/src/note/checks/all-abouts.ts';
import { said } from './support/said.ts';

describe('the sound notes that the examples are laid over', () => {
  it.each(['operation', 'follow-up', 'amendment', 'department'] as const)('%s: nothing is remarked', (base) => {
    expect(said(runExample({ base, note: '' }))).toEqual([]);
  });

  it('stay silent beside a department file', () => {
    const files = { 'sideport.yaml': '' };
    expect(said(runExample({ note: '', files }))).toEqual([]);
    expect(said(runExample({ base: 'follow-up', note: '', files }))).toEqual([]);
    expect(said(runExample({ base: 'amendment', note: '', files }))).toEqual([]);
  });

  it('are what the files say they are', () => {
    expect(runExample({ base: 'amendment', note: '' }).text).toBe(baseAmendment);
    expect(runExample({ base: 'department', note: '' }).text).toBe(baseDepartment);
  });
});

describe.each(Object.entries(allAbouts).filter(([, about]) => about().noExample === undefined))('%s', (id, about) => {
  const { faulty, sound } = about();

  it('remarks on the faulty example, once, and nothing else does', () => {
    expect(said(runExample(faulty))).toEqual([expect.stringMatching(new RegExp(`\\[${id}\\]$`, 'u'))]);
  });

  it('is silent on the sound example, and so is everything else', () => {
    expect(said(runExample(sound))).toEqual([]);
  });
});
