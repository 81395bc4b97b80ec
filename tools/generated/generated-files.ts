import { checkPageFiles } from './check-pages.ts';
import { computationsPage } from './computations.ts';
import { noteFormatPage } from './note-format.ts';
import { publishedSchemas } from './published-schema.ts';

/** Every generated file of the repository: its path and what it must hold. A test fails when one is stale. */
export function generatedFiles(): Readonly<Record<string, string>> {
  return {
    ...checkPageFiles(),
    ...publishedSchemas(),
    'docs/note-format.md': noteFormatPage(),
    'docs/computations.md': computationsPage(),
  };
}
