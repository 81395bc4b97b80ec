import type { Path, Span } from '@sideport/schemas';
import { extent, spotOf } from '../../editing/spots.ts';
import type { NoteReading } from '../../reading/note-reading.ts';
import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';
import { pathInWords } from '../support/path-in-words.ts';

export const noteDiffersFromDictation = operationCheck({
  id: 'note-differs-from-dictation',
  group: 'agreement',
  summary: 'A field says something else than the dictation.',
  severity: 'warning',
  allowable: true,
  run: (_, say, { reading, dictation }) => {
    const said = dictation?.in(reading);
    if (said === undefined) return;
    for (const { path, inNote, candidates } of said.result.conflicts) {
      const [spoken] = candidates;
      // The side in the text is looked at by a check of its own.
      if (inNote === undefined || spoken === undefined || path[0] === 'eye') continue;
      say({
        at: placeOf(reading, path),
        message: `${pathInWords(path)}: the note says ${inNote}, but ${spoken.value} was dictated (“${spoken.text}”). Which is right?`,
        related: [related('the dictation', said.kept.spanOf(spoken))],
      });
    }
  },
});

/** The field, or the nearest thing that is written where it would be. */
function placeOf(reading: NoteReading, path: Path): { readonly span: Span; readonly key: null; readonly path: Path } {
  const spot = spotOf(reading.tree, reading.kind, path);
  return { span: extent(spot), key: null, path: spot.path };
}

export const aboutNoteDiffersFromDictation: About = () => ({
  why: 'Dictation and field were made by the same person about the same operation; where they differ, one is wrong.',
  whatToDo:
    'Correct the field. If the dictation was wrong, allow the remark and say so: the dictated text stays as it was spoken.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: {
    note: 'dictation: Right eye. Topical anaesthesia. Divide and conquer.\nnucleus:\n  technique: stop and chop',
  },
  sound: { note: 'dictation: Right eye. Topical anaesthesia. Stop and chop.\nnucleus:\n  technique: stop and chop' },
});
