import type { FollowUp } from '@sideport/schemas';
import type { ProseSection } from './document.ts';
import { join } from './english.ts';
import type { Tidy } from './passage.ts';

type Closing = Pick<FollowUp, 'free-text' | 'dictation'> & Partial<Pick<FollowUp, 'codes'>>;

/** What no field could say, what was spoken, and the codes: behind what the sections tell. */
export function closingSections(note: Closing, tidy: Tidy): readonly ProseSection[] {
  return [
    ...wordsSection('free-text', 'Further remarks', tidy(note['free-text'])),
    ...wordsSection('dictation', 'Dictation, as it was spoken', tidy(note.dictation)),
    ...codesSection(note, tidy),
  ];
}

function wordsSection(id: string, heading: string, text: string | undefined): readonly ProseSection[] {
  if (text === undefined) return [];
  const paragraphs = text.split(/\n\s*\n/u).map((paragraph) => paragraph.trim());
  return [{ id, heading, paragraphs: paragraphs.filter((paragraph) => paragraph !== ''), computed: [], amended: [] }];
}

function codesSection({ codes: chosen }: Closing, tidy: Tidy): readonly ProseSection[] {
  const codes =
    chosen?.items.map((one) => join([one.system?.value, tidy(one.code), one.reason && `(${tidy(one.reason)})`])) ?? [];
  if (codes.length === 0) return [];
  return [
    {
      id: 'codes',
      heading: 'Codes chosen by the coder',
      paragraphs: [`${codes.join('; ')}.`],
      computed: [],
      amended: [],
    },
  ];
}
