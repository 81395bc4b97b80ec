import type { Command } from './command.ts';

export interface CommandEntry {
  readonly name: string;
  /** One line of the overview. */
  readonly summary: string;
  /** A command's code is loaded when it is used, so that the others start no slower for it. */
  load(): Promise<Command>;
}

/** Every command, in the order of the overview. */
export const commands: readonly CommandEntry[] = [
  {
    name: 'check',
    summary: 'reads notes and says what is wrong with them',
    load: async () => (await import('./commands/check.ts')).check,
  },
  {
    name: 'compute',
    summary: 'shows every value computed from a note, with inputs, method and source',
    load: async () => (await import('./commands/compute.ts')).compute,
  },
  {
    name: 'show',
    summary: 'shows a note as prose for the record: text, Markdown, a page with the picture, or PDF',
    load: async () => (await import('./commands/show.ts')).show,
  },
  {
    name: 'export',
    summary: 'writes notes as data: JSON, tables, Parquet or FHIR, with codes or without identifiers',
    load: async () => (await import('./commands/export.ts')).exportNotes,
  },
  {
    name: 'dictate',
    summary: 'turns a dictation into fields, each with the words it was read from',
    load: async () => (await import('./commands/dictate.ts')).dictate,
  },
  {
    name: 'seal',
    summary: 'signs a final note, so that any later change shows',
    load: async () => (await import('./commands/seal.ts')).seal,
  },
  {
    name: 'verify',
    summary: 'checks seals, and amendments as one chain with the note they amend',
    load: async () => (await import('./commands/verify.ts')).verify,
  },
  {
    name: 'amend',
    summary: 'writes an amendment beside a final note',
    load: async () => (await import('./commands/amend.ts')).amend,
  },
  {
    name: 'explain',
    summary: 'explains a check, or lists them all',
    load: async () => (await import('./commands/explain.ts')).explain,
  },
  {
    name: 'format',
    summary: 'tidies layout and units, nothing else',
    load: async () => (await import('./commands/format.ts')).format,
  },
  {
    name: 'new',
    summary: 'starts a note from what the department usually does',
    load: async () => (await import('./commands/new.ts')).newNote,
  },
  {
    name: 'audit',
    summary: 'turns notes and follow-ups into figures and a report',
    load: async () => (await import('./commands/audit.ts')).audit,
  },
];
