import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readPlainTree } from '../../server/src/note/reading/plain-tree.ts';
import { readYamlTree } from '../../server/src/note/reading/yaml-tree.ts';
import { mutate, seeded } from '../robustness/mutate.ts';

// The independent reader is the yaml package: whatever the plain reader answers must be the same tree.
const samples = readdirSync('samples/sound', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => readFileSync(`samples/sound/${name}`, 'utf8'));

test('every sound sample is of the plain kind', () => {
  for (const text of samples) expect(readPlainTree(text)).toBeDefined();
});

test('the plain reader agrees with the full reader on every sound sample, with either line end', () => {
  for (const text of samples) {
    for (const variant of [text, text.replace(/\r?\n/gu, '\r\n'), `\uFEFF${text}`, text.trimEnd()]) {
      const plain = readPlainTree(variant);
      expect(plain).toEqual(readYamlTree(variant));
    }
  }
});

test('the plain reader agrees with the full reader on 12,000 damaged notes, or leaves them to it', () => {
  const random = seeded(20310314);
  let answered = 0;
  for (let i = 0; i < 12_000; i++) {
    const whole = samples[i % samples.length] ?? '';
    const sections = whole.split(/\n(?=[a-z])/u);
    const from = Math.floor(random() * sections.length);
    const text = mutate(sections.slice(from, from + 4).join('\n'), random);
    const plain = readPlainTree(text);
    if (plain === undefined) continue;
    answered++;
    const full = readYamlTree(text);
    if (JSON.stringify(plain) !== JSON.stringify(full)) expect({ text, tree: plain }).toEqual({ text, tree: full });
  }
  // Most kinds of damage, such as a value in another style, are left to the full reader.
  expect(answered).toBeGreaterThan(900);
});
