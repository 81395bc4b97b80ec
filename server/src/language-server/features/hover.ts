import { MarkupKind, type Hover, type HoverParams } from 'vscode-languageserver';
import { explainAt } from '../../note/editing/explain.ts';
import { pathAt } from '../../note/editing/spots.ts';
import { markdownExplanation, plainExplanation } from '../../note/editing/explanation-text.ts';
import { forNote, type Server } from '../handlers.ts';

export function hover(server: Server): void {
  server.connection.onHover(
    forNote<HoverParams, Hover | null>(server, 'textDocument/hover', null, (note, { position }) => {
      const offset = note.lines.offsetAt(position);
      const path = pathAt(note.reading.tree, note.reading.kind, offset);
      const explanation = explainAt(note.reading, note.computedBeside(path), offset);
      if (explanation === undefined) return null;
      const { dictation } = note.around.surroundings;
      const words = dictation?.wordsFor(note.reading, path);
      const whole = words === undefined ? explanation : { ...explanation, dictated: words };
      const markdown = server.can().markdownHover;
      return {
        range: note.lines.rangeOf(explanation.span),
        contents: {
          kind: markdown ? MarkupKind.Markdown : MarkupKind.PlainText,
          value: markdown ? markdownExplanation(whole) : plainExplanation(whole),
        },
      };
    }),
  );
}
