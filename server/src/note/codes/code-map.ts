import type { CodeTable } from '@sideport/schemas/codes/table.ts';
import type { CodeSuggestion } from './suggestion.ts';

/** One line of the user's own map from a suggested code to a code of a system that may not be handed on. */
export interface MappedCode {
  readonly fromSystem: string;
  readonly fromCode: string;
  readonly toSystem: string;
  readonly toCode: string;
}

const HEADING = /^"?(?:from|system)\b/iu;

/**
 * Reads a map of four columns: system, code, own system, own code. Titles have no place in it: owned titles may not
 * be kept here.
 * @returns the map, or what is wrong with which line
 */
export function readCodeMap(text: string): readonly MappedCode[] | { readonly fault: string } {
  const map: MappedCode[] = [];
  for (const [index, line] of text
    .replace(/^\ufeff/u, '')
    .split(/\r?\n/u)
    .entries()) {
    if (line.trim() === '' || line.startsWith('#') || (index === 0 && HEADING.test(line))) continue;
    const cells = cellsOf(line);
    if (cells === undefined) return { fault: `line ${index + 1} has a quotation mark too many or too few` };
    const [fromSystem = '', fromCode = '', toSystem = '', toCode = ''] = cells;
    if (cells.length !== 4 || cells.includes('')) {
      return {
        fault: `line ${index + 1} should have four columns, system, code, own system and own code, parted by commas`,
      };
    }
    map.push({ fromSystem, fromCode, toSystem, toCode });
  }
  return map;
}

const CELL = /(?:^|,)\s*(?:"((?:[^"]|"")*)"|([^,]*?))\s*(?=,|$)/gu;

/** The cells of a line; a cell may stand in quotes (RFC 4180). Undefined where a quotation mark has no partner. */
function cellsOf(line: string): readonly string[] | undefined {
  const cells: string[] = [];
  for (const [, quoted, bare = ''] of line.matchAll(CELL)) {
    if (bare.includes('"')) return undefined;
    cells.push(quoted === undefined ? bare : quoted.replaceAll('""', '"').trim());
  }
  return cells;
}

/** The lines of a map that no code of these tables leads to: a slip, most often. */
export function unusedLines(map: readonly MappedCode[], tables: readonly CodeTable[]): readonly MappedCode[] {
  return map.filter(
    ({ fromSystem, fromCode }) =>
      !tables.some(
        ({ system, codes }) =>
          system === fromSystem && codes.some(({ right, left }) => [right, left].includes(fromCode)),
      ),
  );
}

/** The suggestions together with what the user's map makes of them. */
export function withMappedCodes(
  suggestions: readonly CodeSuggestion[],
  map: readonly MappedCode[],
): readonly CodeSuggestion[] {
  const mapped = suggestions.flatMap((suggestion) =>
    map
      .filter(({ fromSystem, fromCode }) => fromSystem === suggestion.system && fromCode === suggestion.code)
      .map(({ toSystem, toCode }): CodeSuggestion => ({
        ...suggestion,
        system: toSystem,
        code: toCode,
        title: '',
        edition: 'as in your own map',
        status: 'confirmed locally',
        codeSource: 'your own map of codes',
        mappedFrom: { system: suggestion.system, code: suggestion.code },
      })),
  );
  return [...suggestions, ...mapped];
}
