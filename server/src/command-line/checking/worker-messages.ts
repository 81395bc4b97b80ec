import type { Input } from '../find-notes.ts';
import type { Checked, CheckerOptions, FileFacts } from './checker.ts';

/** What passes between a run and its workers; plain data. */
export type Task =
  | { readonly task: 'facts'; readonly paths: readonly string[] }
  | { readonly task: 'know'; readonly facts: readonly FileFacts[] }
  | { readonly task: 'check'; readonly inputs: readonly Input[] };

export type Answer =
  | { readonly answer: 'facts'; readonly facts: readonly FileFacts[] }
  | { readonly answer: 'known' }
  | { readonly answer: 'checked'; readonly checked: readonly Checked[] }
  | { readonly answer: 'failed'; readonly kind: string };

export type WorkerStart = CheckerOptions;
