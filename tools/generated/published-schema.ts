import * as z from 'zod';
import type { Guide } from '../../schemas/src/fields/guide.ts';
import { planOfSchema, schemaOf } from '../../schemas/src/fields/schema.ts';
import type { Notation } from '../../schemas/src/notation/notation.ts';
import { recordPlan, type RecordKind } from '../../schemas/src/records/records.ts';
import { recordKinds } from '../../schemas/src/vocabulary/head.ts';

type JsonSchema = Record<string, unknown>;

const DRAFT = 'https://json-schema.org/draft/2020-12/schema';

/**
 * The published JSON Schemas, by file: what a general-purpose tool can know of a note. Looser than our own reading in
 * what it cannot express (which values agree), stricter in spelling (a schema cannot overlook case).
 */
export function publishedSchemas(): Readonly<Record<string, string>> {
  return {
    'schemas/published/opnote.schema.json': text(noteSchema()),
    'schemas/published/sideport.schema.json': text({
      $schema: DRAFT,
      $id: 'urn:sideport:schema:department:1',
      ...recordSchema('department'),
    }),
  };
}

function noteSchema(): JsonSchema {
  const kinds = recordKinds.words;
  return {
    $schema: DRAFT,
    $id: 'urn:sideport:schema:note:1',
    title: 'Operative note',
    description: 'One record about one operated eye: an operation, a follow-up or an amendment.',
    type: 'object',
    required: ['record'],
    properties: { record: { enum: kinds.flatMap(({ word, synonyms }) => [word, ...synonyms]) } },
    allOf: kinds.map(({ word, synonyms }) => ({
      if: { properties: { record: { enum: [word, ...synonyms] } }, required: ['record'] },
      // oxlint-disable-next-line unicorn/no-thenable -- a keyword of JSON Schema
      then: { $ref: `#/$defs/${word}` },
    })),
    $defs: Object.fromEntries(kinds.map(({ word }) => [word, recordSchema(word)])),
  };
}

function recordSchema(kind: RecordKind): JsonSchema {
  const { $schema: _, ...schema } = z.toJSONSchema(schemaOf(recordPlan(kind)), {
    target: 'draft-2020-12',
    io: 'input',
    override: ({ zodSchema, jsonSchema }) => describe(zodSchema, jsonSchema),
  });
  return schema;
}

/** Replaces what zod knows of a field by what the guide and the notation know. */
function describe(schema: object, json: JsonSchema): void {
  const plan = planOfSchema(schema);
  if (plan === undefined) return;
  const { guide } = plan;
  const shape = { ...json };
  for (const key of Object.keys(json)) delete json[key];
  json['title'] = guide.label;
  json['description'] = description(guide, plan.kind === 'value' ? plan.notation.unit : undefined);
  if (guide.example !== undefined) json['examples'] = [guide.example];
  const absences = { enum: ['not recorded', ...(guide.says ?? [])] };
  if (plan.kind === 'value') json['anyOf'] = [...valueForms(guide, plan.notation), absences];
  else if (shape['type'] === 'array') {
    const { items } = shape as { readonly items: JsonSchema };
    // One value counts as a list of one; one group does not.
    json['anyOf'] = [shape, ...(items['type'] === 'object' ? [] : [items]), absences];
  } else if (guide.says === undefined) Object.assign(json, shape);
  else json['anyOf'] = [shape, absences];
}

function valueForms(guide: Guide, notation: Notation<unknown>): JsonSchema[] {
  if (notation.words !== undefined) {
    const words = notation.words.flatMap(({ word, synonyms }) => [word, ...synonyms]);
    return [{ enum: [...words, ...words.flatMap(asTyped)] }];
  }
  const written: JsonSchema = { type: 'string' };
  if (notation.pattern !== undefined) written['pattern'] = notation.pattern;
  if (!notation.bareNumber) return [written];
  const bare: JsonSchema = { type: 'number' };
  if (notation.unit !== undefined && guide.possible !== undefined) {
    [bare['minimum'], bare['maximum']] = guide.possible;
  }
  return [written, bare];
}

/** What a general-purpose reader makes of a word without quotes. */
function asTyped(word: string): (number | boolean)[] {
  if (word === 'true' || word === 'false') return [word === 'true'];
  return /^\d+$/u.test(word) ? [Number(word)] : [];
}

function description({ meaning, usual, source }: Guide, unit = ''): string {
  const parts = [meaning];
  if (unit !== '') parts.push(`A bare number is in ${unit}.`);
  if (usual !== undefined) parts.push(`Usual: ${usual[0]} to ${usual[1]}${unit === '' ? '' : ` ${unit}`}.`);
  if (source !== undefined) parts.push(`Source: ${source}.`);
  return parts.join(' ');
}

function text(schema: JsonSchema): string {
  return `${JSON.stringify(schema, null, 2)}\n`;
}
