import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { explainAll, explainCheck, nearestCheck } from '../../server/src/note/checks/explain.ts';
import { knownChecks } from '../../server/src/note/checks/known-checks.ts';

const folder = fileURLToPath(new URL('../../docs/checks/', import.meta.url));

describe('docs/checks (made by: npm run generate)', () => {
  it('has one page for each check, and no other', () => {
    const pages = readdirSync(folder).filter((name) => name !== 'README.md');
    expect(pages.toSorted()).toEqual(knownChecks.map(({ id }) => `${id}.md`).toSorted());
  });

  it.each(knownChecks.map(({ id }) => id))('%s.md is not stale', (id) => {
    expect(readFileSync(`${folder}${id}.md`, 'utf8')).toBe(explainCheck(id)?.markdown);
  });

  it('README.md is not stale', () => {
    expect(readFileSync(`${folder}README.md`, 'utf8')).toBe(explainAll().markdown);
  });
});

describe('explaining a check', () => {
  it('shows what the example yields', () => {
    const page = explainCheck('decimal-comma');
    expect(page?.text).toContain('error: Volume: “3,5 mL” has a decimal comma');
    expect(page?.markdown).toContain('# decimal-comma\n');
  });

  it('knows no other check, but the one that was probably meant', () => {
    expect(explainCheck('decimal-coma')).toBeUndefined();
    expect(nearestCheck('decimal-coma')).toBe('decimal-comma');
  });
});
