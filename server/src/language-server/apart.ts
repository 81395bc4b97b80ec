import type { ComputedNote } from '../note/computing/computed.ts';
import { newDictation, type Dictation } from '../note/dictation/dictation.ts';
import { drawAstigmatism } from '../note/picture/double-angle.ts';
import { drawEye } from '../note/picture/eye-picture.ts';
import { colourDeclarations, pictureStyle } from '../note/picture/style.ts';
import { proseAsMarkdown } from '../note/prose/markdown.ts';
import { proseOf } from '../note/prose/prose-of.ts';
import type { NoteReading } from '../note/reading/note-reading.ts';
import type { NoteSet } from '../note/set/note-set.ts';
import type { Page, Picture } from './own-requests.ts';

/**
 * What is large and seldom asked for: what understands dictations, the note in words, and the pictures. It is a program
 * of its own beside the server and is loaded when it is first wanted.
 */
export interface Apart {
  readonly dictation: Dictation;
  /** The note as prose for the record; undefined for a text that is no note. */
  prose(reading: NoteReading, computed: ComputedNote, set: NoteSet | null): Page | undefined;
  readonly drawEye: typeof drawEye;
  readonly drawAstigmatism: typeof drawAstigmatism;
  readonly styles: Picture['styles'];
}

export function newApart(): Apart {
  return {
    dictation: newDictation(),
    prose: (reading, computed, set) => {
      const prose = proseOf(reading, computed, set);
      return prose && { title: prose.document.title, markdown: proseAsMarkdown(prose.document) };
    },
    drawEye,
    drawAstigmatism,
    styles: { all: pictureStyle, light: colourDeclarations('light'), dark: colourDeclarations('dark') },
  };
}
