import { expect, test } from 'vitest';
import { dictate } from '../../server/src/note/dictation/dictate.ts';
import { toNeutral } from '../reference/dictation-keys.mjs';
import phrasings from './phrasings.json' with { type: 'json' };
import { keys } from './score.ts';

const asText = (value: unknown): string =>
  JSON.stringify(Array.isArray(value) ? value.map(String).toSorted() : (value ?? null));

const answers = phrasings.map(([key, value, text]) => {
  const given = toNeutral(dictate(String(text))).fields.filter((field) => field.key === key);
  return { key: String(key), said: `${String(text)} (${String(key)} ${asText(value)})`, value, given };
});

test('every key can be said in several ways', () => {
  for (const key of Object.keys(keys)) {
    expect(answers.filter((answer) => answer.key === key).length, key).toBeGreaterThanOrEqual(3);
  }
});

test('a single sentence gives its value, and no other for the same key', () => {
  const missed = answers.filter(({ value, given }) => !given.some((field) => asText(field.value) === asText(value)));
  const wrong = answers.filter(({ value, given }) => given.some((field) => asText(field.value) !== asText(value)));
  expect(missed.map(({ said }) => said)).toEqual([]);
  expect(wrong.map(({ said }) => said)).toEqual([]);
});

test('what is critical is never filled by speech alone', () => {
  const filled = answers.filter(
    ({ key, given }) => keys[key]?.critical === true && given.some(({ state }) => state === 'filled'),
  );
  expect(filled.map(({ said }) => said)).toEqual([]);
});
