import { operationCheck, type About } from '../check.ts';
import { mention, narrativeOf } from '../support/prose.ts';
import { related } from '../support/place.ts';
import { certainEye } from '../support/sides.ts';

const words = {
  right: { hints: ['right', 're'], pattern: /\b(?:right (?:eye|cataract|lens|phaco\w*)|RE)\b/gu },
  left: { hints: ['left', 'le'], pattern: /\b(?:left (?:eye|cataract|lens|phaco\w*)|LE)\b/gu },
} as const;

export const proseNamesOtherEye = operationCheck({
  id: 'prose-names-other-eye',
  group: 'writing',
  summary: 'The text speaks of the other eye.',
  severity: 'warning',
  allowable: true,
  run: (note, say, { reading }) => {
    const eye = certainEye(note);
    if (eye === undefined || note.eye === undefined) return;
    const other = eye === 'right' ? 'left' : 'right';
    const found = mention(narrativeOf(reading), words[other]);
    if (found === undefined) return;
    say({
      at: found.place,
      message: `The text says “${found.text}”, but this note is about the ${eye} eye. Is the other eye meant?`,
      related: [related(`the note: ${eye}`, note.eye)],
    });
  },
});

export const aboutProseNamesOtherEye: About = () => ({
  why: 'Text is often copied from another note; the side in it then survives unread.',
  whatToDo: 'Read the sentence. If it means the other eye, say “fellow eye”, or allow the remark.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (site)',
  since: '1.0',
  faulty: { note: 'findings: left eye quiet, soft nucleus' },
  sound: { note: 'findings: right eye quiet, soft nucleus; fellow left eye pseudophakic' },
});
