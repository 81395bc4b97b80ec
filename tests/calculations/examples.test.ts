import { describe, expect, test } from 'vitest';
import { CALCULATIONS } from '../../server/src/note/calculations/list.ts';
import { answer, unlike } from './answer.ts';

describe('every calculation', () => {
  test('has a name of its own, in kebab-case', () => {
    const names = CALCULATIONS.map(({ about }) => about.name);
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
  });

  test.each(CALCULATIONS.map((listed) => [listed.about.name, listed] as const))(
    '%s gives what its example says',
    (_name, { about, runExample }) => {
      const outcome = runExample();
      expect(unlike(answer(outcome), about.example.gives, about.example.within ?? 0.0005)).toBeUndefined();
      expect(outcome).toMatchObject({ ok: true, unit: about.unit, method: about.method, source: about.source });
      expect(JSON.parse(JSON.stringify(outcome))).toEqual(outcome);
    },
  );

  test.each(CALCULATIONS.map((listed) => [listed.about.name, listed] as const))(
    '%s is described in whole',
    (_name, { about }) => {
      for (const text of [about.definition, about.domain, about.method, about.source.citation])
        expect(text.length).toBeGreaterThan(5);
      for (const text of [about.definition, about.domain, ...about.cautions]) expect(text).toMatch(/[.)]$/);
      expect(Object.keys(about.inputs).length).toBeGreaterThan(0);
    },
  );
});
