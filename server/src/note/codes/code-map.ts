import type { CodeSuggestion } from './suggestion.ts';

/** One line of the user's own map from a suggested code to a code of a system that may not be handed on. */
export interface MappedCode {
  readonly fromSystem: string;
  readonly fromCode: string;
  readonly toSystem: string;
  readonly toCode: string;
}

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
    if (line.trim() === '' || line.startsWith('#') || (index === 0 && /^from/iu.test(line))) continue;
    const cells = line.split(',').map((cell) => cell.trim());
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
      })),
  );
  return [...suggestions, ...mapped];
}
