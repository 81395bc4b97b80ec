import {
  MarkupKind,
  type CodeLens,
  type CodeLensParams,
  type InlayHint,
  type InlayHintParams,
} from 'vscode-languageserver';
import { countsAbove, valuesBeside, type Above, type Beside } from '../../note/editing/beside.ts';
import { escaped } from '../../note/editing/explanation-text.ts';
import { forNote, type Server } from '../handlers.ts';
import type { OpenNote } from '../note-book.ts';
import { editorCommands } from '../own-requests.ts';

/** Computed values at the end of their lines, and a line above each section that says how many there are. */
export function computedValues(server: Server): void {
  server.connection.languages.inlayHint.on(
    forNote<InlayHintParams, InlayHint[]>(server, 'textDocument/inlayHint', [], async (note, { range }) => {
      const { besideLines } = await server.settings.of(note.uri);
      if (!besideLines) return [];
      const [start, end] = [note.lines.offsetAt(range.start), note.lines.offsetAt(range.end)];
      const progress = note.around.surroundings.dictation?.progress(note.reading);
      const dictated = progress === undefined ? [] : [{ ...progress, explanations: [] }];
      return [...valuesBeside(note.reading, note.computed), ...dictated]
        .filter(({ at }) => at >= start && at <= end)
        .map((beside) => hintOf(beside, note));
    }),
  );
  server.connection.onCodeLens(
    forNote<CodeLensParams, CodeLens[]>(server, 'textDocument/codeLens', [], async (note) => {
      const { aboveSections } = await server.settings.of(note.uri);
      if (!aboveSections || !server.can().commands.has(editorCommands.showComputed)) return [];
      return countsAbove(note.reading, note.computed).map((above) => lensOf(above, note));
    }),
  );
}

function hintOf({ at, text, explanations }: Beside, { lines }: OpenNote): InlayHint {
  const parts = explanations.map(({ says, rests, cautions }) =>
    [`**${escaped(says)}**`, escaped(rests), ...cautions.map((caution) => escaped(`Caution: ${caution}`))].join('\n\n'),
  );
  return {
    position: lines.positionAt(at),
    label: text,
    paddingLeft: true,
    tooltip: { kind: MarkupKind.Markdown, value: parts.join('\n\n') },
  };
}

function lensOf({ span, computed, notComputed }: Above, { lines, uri }: OpenNote): CodeLens {
  const counted = `${computed} ${computed === 1 ? 'value' : 'values'} computed`;
  const title = notComputed === 0 ? counted : `${counted}, ${notComputed} not`;
  return {
    range: lines.rangeOf(span),
    command: { title, command: editorCommands.showComputed, arguments: [uri] },
  };
}
