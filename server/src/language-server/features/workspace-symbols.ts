import { SymbolKind, type SymbolInformation, type WorkspaceSymbolParams } from 'vscode-languageserver';
import { mentionsIn } from '../../note/editing/mentions.ts';
import type { Server } from '../handlers.ts';
import { lineIndex } from '../line-index.ts';
import type { LiveSet } from '../live-set.ts';

/** No one reads a longer list. */
const MOST = 200;

/** Notes by their id, date or patient reference; lenses and staff by their names in the department file. */
export function workspaceSymbols(server: Server): void {
  server.connection.onWorkspaceSymbol(
    server.guard<WorkspaceSymbolParams, SymbolInformation[]>('workspace/symbol', [], ({ query }) => {
      const wanted = query.toLowerCase();
      const found = (server.notes.sets?.all() ?? []).flatMap((set) => [...notesOf(set), ...entriesOf(set, server)]);
      return found
        .filter(({ name, containerName }) => `${name} ${containerName ?? ''}`.toLowerCase().includes(wanted))
        .slice(0, MOST);
    }),
  );
}

function notesOf(set: LiveSet): SymbolInformation[] {
  return set.facts.flatMap(({ file, id, record, date, patient }) => {
    const uri = set.uriOf(file);
    if (uri === undefined || id === undefined) return [];
    const start = { line: 0, character: 0 };
    const container = [record, date, patient].filter((part) => part !== undefined).join(', ');
    return [
      { name: id, kind: SymbolKind.File, location: { uri, range: { start, end: start } }, containerName: container },
    ];
  });
}

function entriesOf(set: LiveSet, { notes }: Server): SymbolInformation[] {
  const uri = set.departmentUri;
  const reading = uri === undefined ? undefined : (notes.reading(uri) ?? set.departmentReading);
  if (uri === undefined || reading === undefined) return [];
  const lines = lineIndex(reading.text);
  return mentionsIn(reading).map(({ thing, name, span }) => ({
    name,
    kind: SymbolKind.Constant,
    location: { uri, range: lines.rangeOf(span) },
    containerName: thing === 'lens' ? 'lens of the department' : 'staff of the department',
  }));
}
