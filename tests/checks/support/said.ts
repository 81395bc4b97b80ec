import type { ExampleRun } from '../../../server/src/note/checks/examples/run-example.ts';

/** What was remarked, one line each: severity, message, check. */
export function said({ review }: ExampleRun): string[] {
  return review.remarks.map(({ severity, message, check }) => `${severity}: ${message} [${check}]`);
}
