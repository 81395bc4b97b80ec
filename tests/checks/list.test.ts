import { readdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { allAbouts } from '../../server/src/note/checks/all-abouts.ts';
import { allChecks } from '../../server/src/note/checks/all-checks.ts';
import { checkGroups } from '../../server/src/note/checks/check.ts';
import { knownChecks } from '../../server/src/note/checks/known-checks.ts';

const folder = fileURLToPath(new URL('../../server/src/note/checks', import.meta.url));
/** Folders that hold no checks. */
const OTHER = ['examples', 'support'];

describe('the list of checks', () => {
  it('holds exactly the checks that have a file, under the name of the file', () => {
    const files = readdirSync(folder, { withFileTypes: true })
      .filter((entry) => entry.isDirectory() && !OTHER.includes(entry.name))
      .flatMap((entry) => readdirSync(join(folder, entry.name)).map((name) => basename(name, '.ts')));
    expect(allChecks.map(({ id }) => id).toSorted()).toEqual(files.toSorted());
  });

  it('has ids of their own, in plain kebab-case', () => {
    const ids = knownChecks.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.filter((id) => !/^[a-z]+(?:-[a-z0-9]+)+$/u.test(id))).toEqual([]);
  });

  it('says everything of every check', () => {
    expect(Object.keys(allAbouts).toSorted()).toEqual(knownChecks.map(({ id }) => id).toSorted());
    for (const info of knownChecks) {
      const check = { ...info, ...allAbouts[info.id]?.() };
      for (const sentence of [check.summary, check.why, check.whatToDo])
        expect(sentence, check.id).toMatch(/^[A-Z“].*[.?!”)]$/su);
      expect(check.source, check.id).not.toBe('');
      expect(check.since, check.id).toMatch(/^\d+\.\d+$/u);
      expect(checkGroups).toContain(check.group);
    }
  });

  it('lets nobody allow a check of side or identity', () => {
    const allowable = knownChecks.filter(({ group, allowable }) => group === 'side and identity' && allowable);
    expect(allowable.map(({ id }) => id)).toEqual([]);
  });
});
