import { resolve } from 'node:path';
import { nearest } from '@sideport/schemas';
import { codeTable } from '@sideport/schemas/codes/table-schema.ts';
import { codeSets, withReplacements, type CodeSetName, type CodeTable } from '@sideport/schemas/codes/table.ts';
import { readCodeMap, unusedLines } from '../../note/codes/code-map.ts';
import { keysOf, type CodeTables } from '../../note/codes/suggest.ts';
import type { LeavingOptions } from '../../note/export/leave.ts';
import type { Leaving } from '../../note/export/leaving.ts';
import { FileProblem, WrongUse, type World } from '../world.ts';

type Codes = NonNullable<LeavingOptions['codes']>;

/** The tables and the map that codes are suggested with. */
export function codeOptions(
  set: CodeSetName,
  tableFile: string | undefined,
  mapFile: string | undefined,
  world: World,
): Codes {
  const tables = tableFile === undefined ? codeSets[set] : replaced(set, tableFile, world);
  if (mapFile === undefined) return { set, tables, map: [] };
  const map = readCodeMap(read(mapFile, world));
  if ('fault' in map) throw new FileProblem(`${mapFile}: ${map.fault}.`);
  return { set, tables, map };
}

/** A sentence about lines of the map that no code leads to; nothing when there are none. */
export function unusedMapLines({ map, tables }: Codes, mapFile: string | undefined): string | undefined {
  const unused = unusedLines(map, [tables.diagnoses, tables.procedures]);
  if (unused.length === 0) return undefined;
  const lines = unused.map(({ fromSystem, fromCode }) => `${fromSystem} ${fromCode}`).join(', ');
  return `${mapFile}: no code that can be suggested here is mapped by ${lines}. Compare system and code with the tables in schemas/src/codes.`;
}

/** The suggested codes of a record that nobody has compared with the published edition. */
export function codesFromMemory(leaving: Leaving): readonly string[] {
  const suggestions = leaving.kind === 'operation' ? (leaving.codes?.suggestions ?? []) : [];
  return suggestions.flatMap(({ system, code, status }) => (status === 'from memory' ? [`${system} ${code}`] : []));
}

/** A sentence about them; nothing when there are none. */
export function unconfirmedCodes(codes: ReadonlySet<string>): string | undefined {
  if (codes.size === 0) return undefined;
  return `Written from memory, to be compared with the edition in force before they are used: ${[...codes].toSorted().join(', ')}. A table with the department's own entries (--code-table FILE) confirms them.`;
}

function replaced(set: CodeSetName, file: string, world: World): CodeTables {
  const tables = codeSets[set];
  const own = ownTable(read(file, world), file);
  const known = [tables.diagnoses, tables.procedures].map(({ system }) => system);
  if (!known.includes(own.system)) {
    throw new WrongUse(`${file} is a table of ${own.system}, and these codes are of ${known.join(' and ')}.`);
  }
  const asked = keysOf(set)[own.system === tables.diagnoses.system ? 'diagnoses' : 'procedures'];
  refuseUnknownKeys(own, asked, file);
  const [diagnoses, procedures] = [tables.diagnoses, tables.procedures].map((table) =>
    table.system === own.system ? withReplacements(table, own) : table,
  );
  return { diagnoses: diagnoses ?? tables.diagnoses, procedures: procedures ?? tables.procedures };
}

/** An entry that no rule asks for would be passed over in silence. */
function refuseUnknownKeys(own: CodeTable, asked: readonly string[], file: string): void {
  const unknown = own.codes.map(({ key }) => key).filter((key) => !asked.includes(key));
  if (unknown.length === 0) return;
  const words = unknown.map((key) => {
    const meant = nearest(key, asked);
    return meant === undefined ? `“${key}”` : `“${key}” (did you mean “${meant}”?)`;
  });
  throw new WrongUse(
    `${file}: no rule for ${own.system} asks for ${words.join(', ')}. The names of entries are: ${asked.toSorted().join(', ')}.`,
  );
}

function ownTable(text: string, file: string): CodeTable {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    throw new FileProblem(`${file}: this is no JSON. A table looks like schemas/src/codes/opcs4.json.`);
  }
  const parsed = codeTable.safeParse(data);
  if (parsed.success) return parsed.data;
  const places = parsed.error.issues.map(({ path }) => (path.length === 0 ? 'the whole file' : path.join('.')));
  throw new FileProblem(`${file}: these places are not as in schemas/src/codes/opcs4.json: ${places.join(', ')}.`);
}

function read(file: string, world: World): string {
  try {
    return world.files.read(resolve(world.folder, file));
  } catch (error) {
    throw error instanceof FileProblem ? new FileProblem(`${file}: ${error.message}.`) : error;
  }
}
