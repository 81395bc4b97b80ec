import { readdirSync, readFileSync } from 'node:fs';
import { computedValues, type Path } from '@sideport/schemas';
import { describe, expect, test } from 'vitest';
import { followUpValues, operationValues } from '../../server/src/note/computing/all-computed.ts';
import type { ComputedNote } from '../../server/src/note/computing/computed.ts';
import { inputsInWords } from '../../server/src/note/computing/inputs-in-words.ts';
import { samePath } from '../../server/src/note/editing/explain.ts';
import { compute, department, one, operation } from './notes.ts';

const folder = 'samples/sound';
const files = Object.fromEntries(
  readdirSync(folder)
    .filter((name) => name.endsWith('.opnote.yaml'))
    .map((name) => [name, readFileSync(`${folder}/${name}`, 'utf8')]),
);
const sampleDepartment = readFileSync(`${folder}/sideport.yaml`, 'utf8');
const known = new Set<string>(computedValues.map(({ name }) => name));
const samples = Object.entries(files).map(
  ([name, text]) => [name, text, compute(text, { department: sampleDepartment, files, today: '2033-01-01' })] as const,
);

describe('names', () => {
  test('every name is in the list once, kebab-case, with a meaning', () => {
    expect(known.size).toBe(computedValues.length);
    for (const { name, meaning } of computedValues) {
      expect(name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/u);
      expect(meaning).toMatch(/\.$/u);
    }
  });
  test('every name in the list has a definition, and every definition a name in the list', () => {
    const defined = new Set<string>([...operationValues, ...followUpValues].flatMap(({ names }) => names));
    expect([...known].filter((name) => !defined.has(name))).toEqual([]);
    expect([...defined].filter((name) => !known.has(name))).toEqual([]);
  });
});

describe.each(samples)('%s', (_name, text, { values, notComputed }) => {
  test('what is asked for beside one place is what stands there among all', () => {
    const around = { department: sampleDepartment, files, today: '2033-01-01' };
    const at = (path: Path, all: ComputedNote) => ({
      values: all.values.filter((value) => samePath(value.path, path)),
      notComputed: all.notComputed.filter((each) => samePath(each.path, path)),
    });
    for (const path of [...values, ...notComputed].map((each) => each.path)) {
      expect(at(path, compute(text, around, path))).toEqual(at(path, { values, notComputed }));
    }
  });
  test('what is computed is plain data, belongs to a place in the text and rests on something', () => {
    expect(JSON.parse(JSON.stringify(values))).toEqual(values);
    for (const value of values) {
      expect(known.has(value.name)).toBe(true);
      expect(value.span.end).toBeGreaterThan(value.span.start);
      expect(value.span.end).toBeLessThanOrEqual(text.length);
      expect(text.slice(value.span.start, value.span.end)).not.toContain('\n');
      expect(value.path.length).toBeGreaterThan(0);
      expect(inputsInWords(value).length).toBeGreaterThan(0);
      expect(value.method.length).toBeGreaterThan(3);
      expect(value.source).toMatch(/\((?:seen|seen second-hand|from memory|derived|common practice)\)$/u);
      expect(value.display).not.toMatch(/NaN|undefined|null|\[object/u);
      expect(new Set(value.cautions).size).toBe(value.cautions.length);
      expect(value.inline ? value.display.length : 0).toBeLessThan(60);
    }
  });
  test('what is not computed says why', () => {
    for (const { name, because } of notComputed) {
      expect(known.has(name)).toBe(true);
      expect(because.length).toBeGreaterThan(8);
      expect(because).not.toMatch(/NaN|undefined|null|the program failed/u);
    }
  });
});

test('an amendment, a department file and a text that is no note are computed to nothing', () => {
  for (const text of ['', 'opnote: 1\nrecord: amendment\n', 'no note at all', '- a\n- b\n'])
    expect(compute(text).values).toEqual([]);
});

test('a half-written note computes what it can and throws at nothing', () => {
  const whole = files['long-eye-ring.opnote.yaml'] ?? '';
  for (let length = 0; length < whole.length; length += 97) {
    const { notComputed } = compute(whole.slice(0, length), { department });
    expect(notComputed.filter(({ because }) => because.includes('the program failed'))).toEqual([]);
  }
});

test('inputs are said in words, with their units', () => {
  const note = compute(operation('preop:\n  biometry:\n    k1: 43.25 D @ 5\n    k2: 44.50 D @ 95\n'));
  expect(inputsInWords(one(note, 'corneal-astigmatism'))).toEqual([
    'k1 43.25 D @ 5°',
    'k2 44.50 D @ 95°',
    'index 1.3375',
  ]);
});
