import { join } from 'node:path';
import { jsonText } from '../../note/export/json-text.ts';
import { documentBundle } from '../../note/fhir/document-bundle.ts';
import { operationProse } from '../../note/prose/operation-prose.ts';
import { contentHash } from '../checking/content-hash.ts';
import type { FileWriter, Files } from '../world.ts';
import type { RecordWriter } from './record-writer.ts';

/**
 * Each operation as one FHIR document.
 * @param write takes the JSON of a document and its number, from 1
 */
function fhirWriter(made: string, write: (json: string, number: number) => void, finish: () => void): RecordWriter {
  const remarks: string[] = [];
  const problems: string[] = [];
  let number = 0;
  let others = 0;
  return {
    form: 'documents',
    leavesOut: (kind) => {
      if (kind === 'operation') return false;
      others += 1;
      return true;
    },
    add: ({ file, leaving, unread }) => {
      if (leaving.kind !== 'operation') return;
      const computed = { values: leaving.computed, notComputed: [] };
      const prose = operationProse(leaving.note, { computed, amendments: leaving.amendments, unread });
      const bundle = documentBundle(leaving, { prose, made, hash: contentHash });
      if ('because' in bundle) {
        problems.push(`${file}: it was left out: ${bundle.because}.`);
        return;
      }
      number += 1;
      write(jsonText(bundle), number);
    },
    finish: () => {
      if (others > 0)
        remarks.push(
          `Follow-ups and amendments (${others}) have no document of their own; amendments of an operation stand with it.`,
        );
      finish();
    },
    remarks,
    problems,
  };
}

/** A file for each document, named by its number: nothing of a note goes into a file name. */
export function fhirFolderWriter(folder: string, files: Files, made: string): RecordWriter {
  const write = (json: string, number: number): void =>
    files.write(join(folder, `document-${String(number).padStart(4, '0')}.json`), `${json}\n`);
  return fhirWriter(made, write, () => undefined);
}

/** One document a line. */
export function fhirLinesWriter(file: FileWriter, made: string): RecordWriter {
  return fhirWriter(
    made,
    (json) => file.write(`${json}\n`),
    () => file.close(),
  );
}
