import { describe, expect, test } from 'vitest';
import { csvRecord } from '../../server/src/note/export/csv.ts';
import { computedDecimal } from '../../server/src/note/export/written-value.ts';
import { at } from './typed-note.ts';
import { followUp, folderOf, operation, recordOf, rowOf, tablesOf, type Row } from './leaving-notes.ts';
import { run } from './run.ts';

const acuity = (text: string): string => `preop:\n  acuity:\n    corrected: ${text}\n`;

/** The logMAR that `compute` gives. */
async function computedLogmar(note: string): Promise<number | undefined> {
  const { out } = await run('compute', `${folderOf({ note })}/note.opnote.yaml`, '--format', 'json');
  const { values } = JSON.parse(out) as {
    readonly values: readonly { readonly name: string; readonly value: number }[];
  };
  return values.find(({ name }) => name === 'acuity-logmar')?.value;
}

describe('logMAR', () => {
  // Letters: 0.02 logMAR each (five to a line of 0.1, ETDRS). CF and HM: Schulze-Bonsel et al., IOVS 2006;47:1236-40.
  // PL and NPL have no measured value; 2.7 and 3.0 are extrapolations of later authors (from memory).
  test.each([
    ['6/36', Math.log10(6), ''],
    ['6/36-2', Math.log10(6) + 0.04, ''],
    ['6/9+1', Math.log10(1.5) - 0.02, ''],
    ['0.25', Math.log10(4), ''],
    ['logMAR 0.56', 0.56, ''],
    ['CF', 1.85, 'schulze-bonsel-2006'],
    ['HM', 2.3, 'schulze-bonsel-2006'],
    ['PL', 2.7, 'extrapolated'],
    ['NPL', 3, 'extrapolated'],
  ])('%s is one number everywhere', async (text, logmar, scheme) => {
    const note = operation(acuity(text));
    const { table } = await tablesOf(folderOf({ note }));
    const [row] = table('operations');
    const computed = table('computed').find(({ name }) => name === 'acuity-logmar');
    expect(Number(row?.['acuity_corrected_logmar'])).toBeCloseTo(logmar, 9);
    expect(row?.['acuity_corrected_logmar']).toBe(computed?.['value']);
    expect(Number(computed?.['value'])).toBeCloseTo((await computedLogmar(note)) ?? Number.NaN, 9);
    expect(row?.['acuity_corrected_scheme']).toBe(scheme);
    expect(row?.['acuity_corrected']).toBe(text);
  });
});

describe('numbers', () => {
  test.each(['-2.939152317953672e-17', '-1e-7', '1.5E+3', '-0.50'])('%s is not guarded', (number) =>
    expect(csvRecord([number])).toBe(`${number}\r\n`),
  );
  test('nothing in a column of numbers is guarded', () =>
    expect(csvRecord(['-', '-'], { isNumber: (index) => index === 1 })).toBe("'-,-\r\n"));
  test.each([
    [-2.939152317953672e-17, '0'],
    [-0, '0'],
    [1.25e-7, '0.000000125'],
    [0.1 + 0.2, '0.3'],
    [0.818_151_250_383_643_6, '0.818151250384'],
    [123_456.7, '123456.7'],
    [-14.25, '-14.25'],
    [180, '180'],
    [400, '400'],
  ])('%d leaves as %s', (value, text) => expect(computedDecimal(value)).toBe(text));

  test.each([
    ['axial-length: 2.3410 cm', '23.410'],
    ['axial-length: 23.41 mm', '23.41'],
    ['axial-length: 23410 µm', '23.410'],
    ['axial-length: 24 mm', '24'],
  ])('%s leaves as %s mm', async (line, expected) => {
    const note = operation(`preop:\n  biometry:\n    ${line}\n`);
    expect((await rowOf(note))['axial_length_mm']).toBe(expected);
    expect(at(await recordOf(note), 'note.preop.biometry.axial-length')).toEqual({ unit: 'mm', value: expected });
  });
  test('a conversion that is no shift of the point has its own digits', async () =>
    expect((await rowOf(operation('nucleus:\n  ultrasound-time: 1.50 min\n')))['ultrasound_time_s']).toBe('90'));
  test('a dose keeps its digits', async () => {
    const drugs = 'drugs:\n  - drug: cefuroxime\n    dose: 1.0 mg in 0.10 mL\n';
    const { table } = await tablesOf(folderOf({ note: operation(drugs) }));
    expect(table('drugs')[0]).toMatchObject({ mass_mg: '1.0', volume_ml: '0.10' });
  });

  test.each([
    ['+0.00 / -0.75 x 0', { sphere: '0.00', cylinder: '-0.75', axis: '0' }],
    ['plano / -0.5 x 180', { sphere: '0', cylinder: '-0.5', axis: '180' }],
    ['-0.50 / -0.5 x 90', { sphere: '-0.50', cylinder: '-0.5', axis: '90' }],
    ['-14.25 / -1.50 x 95', { sphere: '-14.25', cylinder: '-1.50', axis: '95' }],
  ])('refraction %s has each number as typed', async (text, expected) => {
    const note = operation(`preop:\n  refraction: ${text}\n`);
    expect(at(await recordOf(note), 'note.preop.refraction')).toMatchObject(expected);
    expect(await rowOf(note)).toMatchObject({
      refraction_sphere_d: expected.sphere,
      refraction_cylinder_d: expected.cylinder,
      refraction_axis_deg: expected.axis,
    });
  });
});

describe('none, not done and not recorded', () => {
  const FIELDS: readonly (readonly [line: string, column: string, cell: string])[] = [
    ['dye: none', 'dye', 'none'],
    ['dye: trypan blue', 'dye', 'trypan blue'],
    ['pupil-aid: none', 'pupil_aids', 'none'],
    ['vitrectomy: not done', 'vitrectomy', 'not done'],
    ['capsulotomy: not done', 'capsulotomy_technique', 'not done'],
    ['nucleus: not done', 'nucleus_technique', 'not done'],
    ['preop:\n  fundus: not done', 'fundus_view', 'not done'],
    ['closure:\n  leak-test: not done', 'leak_test', 'not done'],
    ['drugs: none', 'antibiotic', 'none'],
    ['complications: none', 'complications', 'none'],
    ['comorbidity: none', 'comorbidity', 'none'],
    ['difficulty: none', 'difficulty', 'none'],
  ];
  test.each(FIELDS)('%s', async (line, column, cell) => {
    expect((await rowOf(operation(`${line}\n`)))[column]).toBe(cell);
  });
  test.each(['dye', 'pupil-aid', 'complications', 'comorbidity', 'vitrectomy'])(
    '%s: not recorded is an empty cell',
    async (field) => {
      const row = await rowOf(operation(`${field}: not recorded\n`));
      expect(row[field.replace('pupil-aid', 'pupil_aids')]).toBe('');
      expect(row['said']).toBe(`${field}: not recorded`);
    },
  );
  test('words that say why there is no value are words of their column', async () => {
    const { output } = await tablesOf(folderOf({ note: operation('dye: none\n') }));
    const { resources } = (await import(`${output}/datapackage.json`, { with: { type: 'json' } })) as {
      resources: readonly {
        schema: { fields: readonly { name: string; constraints?: { enum?: readonly string[] } }[] };
      }[];
    };
    const dye = resources[0]?.schema.fields.find(({ name }) => name === 'dye');
    expect(dye?.constraints?.enum).toContain('none');
  });
});

describe('visits', () => {
  const visit = followUp('acuity:\n  uncorrected: 6/9\nkeratometry: not done\ncomplications: none\n');
  const eye = 'preop:\n  acuity:\n    uncorrected: 6/60\n';
  test('have their computed values', async () => {
    const { table } = await tablesOf(folderOf({ op: operation(eye), visit }));
    const rows: readonly Row[] = table('computed-at-visits');
    expect(rows.map(({ note_id, name }) => `${note_id} ${name}`)).toContain('FU-1 lines-gained');
    // 6/60 to 6/9 is 1 less log10(1.5), in lines of 0.1.
    expect(Number(rows.find(({ name }) => name === 'lines-gained')?.['value'])).toBeCloseTo(
      10 - 10 * Math.log10(1.5),
      8,
    );
  });
  test('say why they have no value', async () => {
    const { table } = await tablesOf(folderOf({ op: operation(eye), visit }));
    expect(table('follow-ups')[0]?.['said']).toBe('keratometry: not done; complications: none');
  });
});

test('the eye that the biometry names stands beside its values', async () => {
  const note = operation('preop:\n  biometry:\n    eye: left\n    axial-length: 23.41 mm\n');
  expect(await rowOf(note)).toMatchObject({ eye: 'right', biometry_eye: 'left', axial_length_mm: '23.41' });
});
