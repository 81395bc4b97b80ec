import { Ajv2020 } from 'ajv/dist/2020.js';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { fieldsBelow, recordPlan, type RecordKind } from '@sideport/schemas';

type Node = { readonly properties?: Record<string, Node>; readonly items?: Node; readonly anyOf?: readonly Node[] };

const note = JSON.parse(readFileSync('schemas/published/opnote.schema.json', 'utf8')) as {
  readonly $defs: Record<string, Node>;
};
const department = JSON.parse(readFileSync('schemas/published/sideport.schema.json', 'utf8')) as Node;
const ajv = new Ajv2020({ strict: false });

/** The part of a published schema that describes the field at a path. */
function at(node: Node | undefined, [key, ...rest]: readonly string[]): Node | undefined {
  const forms = node?.anyOf ?? [];
  const group = [node, ...forms, node?.items, ...forms.map(({ items }) => items)].find((form) => form?.properties);
  return key === undefined ? node : at(group?.properties?.[key], rest);
}

test.each<RecordKind>(['operation', 'follow-up', 'amendment', 'department'])(
  'the example of every field of the %s record keeps to the published schema',
  (kind) => {
    const root = kind === 'department' ? department : note.$defs[kind];
    const refused: string[] = [];
    for (const { path, plan } of fieldsBelow(recordPlan(kind))) {
      if (plan.kind !== 'value' || plan.guide.example === undefined) continue;
      const schema = at(root, path);
      if (schema === undefined || !ajv.validate(schema, plan.guide.example)) refused.push(path.join('.'));
    }
    expect(refused).toEqual([]);
  },
);
