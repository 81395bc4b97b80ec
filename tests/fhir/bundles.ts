import { folderOf } from '../export/leaving-notes.ts';
import { exported, run, SOUND } from '../export/run.ts';

/** FHIR JSON as it was parsed. */
export type Json = string | number | boolean | null | Json[] | { [key: string]: Json };
export type JsonObject = { [key: string]: Json };

/** The documents of all sound samples, codes among them. */
export async function sampleBundles(...words: readonly string[]): Promise<readonly JsonObject[]> {
  const { out } = await exported(SOUND, '--as', 'fhir', ...words);
  return out
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as JsonObject);
}

/** The document of the operation among some notes. */
export async function bundleOf(
  notes: string | Readonly<Record<string, string>>,
  ...words: readonly string[]
): Promise<JsonObject> {
  const folder = folderOf(typeof notes === 'string' ? { op: notes } : notes);
  const { out, err } = await run('export', folder, '--as', 'fhir', ...words);
  const [line] = out.trimEnd().split('\n');
  if (line === undefined || line === '') throw new Error(`There is no document: ${err}`);
  return JSON.parse(line) as JsonObject;
}

export const isObject = (value: Json | undefined): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The resources of a bundle, the document's head first. */
export function resources(bundle: JsonObject): readonly JsonObject[] {
  const entries = Array.isArray(bundle['entry']) ? bundle['entry'] : [];
  return entries.flatMap((entry) => (isObject(entry) && isObject(entry['resource']) ? [entry['resource']] : []));
}

/** The first resource of a kind; with a text in its code, the one that has it. */
export function resource(bundle: JsonObject, type: string, code?: string): JsonObject {
  const found = resources(bundle).find(
    (one) =>
      one['resourceType'] === type && (code === undefined || (isObject(one['code']) && one['code']['text'] === code)),
  );
  if (!found) throw new Error(`There is no ${type} ${code ?? ''}`);
  return found;
}

/** A member that should be text; anything else is written as JSON, so that a message can show it. */
export function textOf(object: JsonObject, key: string): string {
  const value = object[key];
  return typeof value === 'string' ? value : JSON.stringify(value ?? null);
}
