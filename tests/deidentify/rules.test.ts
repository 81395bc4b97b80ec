import { fieldsBelow, recordPlan, type RecordKind } from '@sideport/schemas';
import { describe, expect, test } from 'vitest';
import { dateLeaving, LARGEST_SHIFT, shiftFrom } from '../../server/src/note/deidentify/dates.ts';
import { pseudonym } from '../../server/src/note/deidentify/deidentify.ts';
import { isOnlyDrugs } from '../../server/src/note/deidentify/drug-words.ts';
import { treatmentOf } from '../../server/src/note/deidentify/treatments.ts';

const kinds: readonly RecordKind[] = ['operation', 'follow-up', 'amendment'];
const values = kinds.flatMap((kind) =>
  [...fieldsBelow(recordPlan(kind))].flatMap(({ path, plan }) => {
    const value = plan.kind === 'list' ? plan.item : plan;
    return value.kind === 'value' ? [{ path: path.join('.'), value }] : [];
  }),
);

describe('every field of the format', () => {
  test('has a treatment that somebody decided', () => {
    expect(
      values
        .filter(({ path, value }) => treatmentOf(path, value) === undefined)
        .map(({ path, value }) => `${path} (${value.notation.name})`),
    ).toEqual([]);
  });
  // 45 CFR 164.514(b)(2)(i): device identifiers (M), record numbers (H), places (B), dates (C), licence numbers (K).
  test.each([
    ['lens.serial', 'drop'],
    ['lens.udi', 'drop'],
    ['lens.lot', 'drop'],
    ['ring.serial', 'drop'],
    ['place', 'drop'],
    ['patient.born', 'drop'],
    ['start', 'drop'],
    ['patient.ref', 'pseudonym of patient'],
    ['team.ref', 'pseudonym of staff'],
    ['date', 'date'],
    ['signed.at', 'date'],
    ['free-text', 'text'],
    ['dictation', 'text'],
    ['drugs.drug', 'drug names'],
    ['after-care.drops.drug', 'drug names'],
    ['anaesthesia.drug', 'drug names'],
    ['patient.anticoagulant', 'drug names'],
    ['lens.model', 'keep'],
    ['lens.power', 'keep'],
    ['eye', 'keep'],
  ])('%s: %s', (path, treatment) => {
    const field = values.find((one) => one.path === path);
    expect(field && treatmentOf(path, field.value)).toBe(treatment);
  });
  test('free prose is never kept by itself', () =>
    expect(
      values.filter(({ path, value }) => value.guide.prose === true && treatmentOf(path, value) === 'keep'),
    ).toEqual([]));
});

describe('names of drugs', () => {
  test.each([
    'cefuroxime',
    'Dexamethasone 0.1 %',
    'lidocaine 2 % with bupivacaine 0.5 %',
    'tetracaine 1 % drops, lidocaine 1 % in the chamber',
    'moxifloxacin 0.5 mg/0.1 ml',
    'apixaban, not stopped',
    'none',
  ])('%s leaves', (text) => expect(isOnlyDrugs(text)).toBe(true));
  test.each([
    'cefuroxime from Dr Miller',
    'cefuroxime 4711',
    'cefuroxime lot 12',
    'warfarin, last INR at 0151 234567',
    'dexamethasone 2031-03-14',
    'S-05',
    'cefuroxime 5 mgA',
  ])('%s does not', (text) => expect(isOnlyDrugs(text)).toBe(false));
});

describe('dates', () => {
  const rule = { shift: -40, operationDate: '2031-03-14' };
  test.each([
    ['year', '2031-03-14', '2031'],
    ['year', '2031-03-14T10:02+01:00', '2031'],
    ['shifted', '2031-03-14', '2031-02-02'],
    ['shifted', '2031-03-14T10:02+01:00', '2031-02-02'],
    ['days', '2031-03-14', '0'],
    ['days', '2031-04-11', '28'],
    ['days', '2031-02-20', '-22'],
  ] as const)('%s: %s becomes %s', (choice, text, leaving) =>
    expect(dateLeaving(text, { choice, ...rule })).toBe(leaving),
  );
  test('days without an operation to count from do not leave', () =>
    expect(dateLeaving('2031-03-14', { choice: 'days', shift: 0, operationDate: undefined })).toBeUndefined());
  test('a shift is never nothing and stays within its limits', () => {
    const shifts = Array.from({ length: 2000 }, (_, index) =>
      shiftFrom((index * 2_654_435).toString(16).padStart(8, '0')),
    );
    expect(shifts).not.toContain(0);
    expect(Math.max(...shifts)).toBeLessThanOrEqual(LARGEST_SHIFT);
    expect(Math.min(...shifts)).toBeGreaterThanOrEqual(-LARGEST_SHIFT);
    expect(new Set(shifts).size).toBeGreaterThan(200);
  });
});

const keyed = (text: string) => Buffer.from(text).toString('hex').padEnd(64, '0');

test('one text has different pseudonyms as a patient, a person of staff and a note', () => {
  expect(
    new Set((['patient', 'staff', 'note'] as const).map((kind) => pseudonym(kind, 'X-1', keyed).slice(2))).size,
  ).toBe(3);
});
