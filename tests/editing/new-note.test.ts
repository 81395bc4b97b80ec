import { describe, expect, it } from 'vitest';
import { newNoteSnippet, newNoteText } from '../../server/src/note/editing/new-note.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';

const department = readNote(
  'sideport: 1\nstaff:\n  - ref: S-02\n    role: surgeon\n    grade: consultant\n    seat: superior\n    settings:\n      bottle-height: 60 cm\nreview-schedule:\n  - what: pressure $5 {a}\n    due: 1 day\n    when: always\n  - what: retina\n    due: 4 weeks\n    when: long eye\n',
  'department',
);

describe('a new note', () => {
  it('fills in nothing clinical without a mark, and never the eye', () => {
    const text = newNoteText(department.kind === 'department' ? department.note : null, '2031-03-20');
    const reading = readNote(text);
    expect(reading.tree.faults).toEqual([]);
    const unmarked = reading.values.filter(({ field }) => {
      const line = text.slice(field.span.start).split('\n')[0] ?? '';
      return !line.includes('# confirm');
    });
    expect(unmarked.map(({ field }) => `${field.path.join('.')}=${field.text}`)).toEqual([
      'opnote=1',
      'record=operation',
      'status=draft',
      'date=2031-03-20',
      'team.0.role=surgeon',
    ]);
    expect(text).toContain('seat: superior # confirm\n');
    expect(text).toContain('\neye:\n');
    expect(text).not.toContain('retina');
  });

  it('has places to walk, in order, and keeps the department’s own signs as text', () => {
    const snippet = newNoteSnippet(department.kind === 'department' ? department.note : null, '2031-03-20');
    const stops = [...snippet.matchAll(/(?<!\\)\$\{?(\d+)/g)].map(([, number]) => Number(number));
    expect(stops.slice(0, -1)).toEqual(stops.slice(0, -1).map((_, index) => index + 1));
    expect(stops.at(-1)).toBe(0);
    expect(snippet).toContain(String.raw`what: pressure \$5 {a\} # confirm`);
    expect(newNoteText(department.kind === 'department' ? department.note : null, '2031-03-20')).toContain(
      'what: pressure $5 {a} # confirm',
    );
  });

  it('needs no department', () => {
    expect(readNote(newNoteText(null, '2031-03-20')).tree.faults).toEqual([]);
  });
});
