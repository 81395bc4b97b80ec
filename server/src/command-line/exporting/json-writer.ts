import { canonicalJson } from '../../note/export/json-text.ts';
import { recordJson } from '../../note/export/record-json.ts';
import type { FileWriter } from '../world.ts';
import type { RecordWriter } from './record-writer.ts';

/** One record a line, each in the canonical form of RFC 8785. */
export function ndjsonWriter(file: FileWriter): RecordWriter {
  return {
    form: 'records',
    add: ({ leaving }) => file.write(`${canonicalJson(recordJson(leaving))}\n`),
    finish: () => file.close(),
    remarks: [],
  };
}

/** All records in one JSON text. */
export function jsonWriter(file: FileWriter): RecordWriter {
  let parted = '{"version":1,"records":[\n';
  return {
    form: 'records',
    add: ({ leaving }) => {
      file.write(parted + canonicalJson(recordJson(leaving)));
      parted = ',\n';
    },
    finish: () => {
      file.write(parted.startsWith('{') ? '{"version":1,"records":[]}\n' : '\n]}\n');
      file.close();
    },
    remarks: [],
  };
}
