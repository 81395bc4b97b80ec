import { shownAs } from '../file-names.ts';
import { FileProblem, type Files, type FileWriter, type World } from '../world.ts';

/** The files of a run, with the name of the file in whatever goes wrong while it is written. */
export function namedFiles({ files, folder }: World): Files {
  const named = <T>(file: string, work: () => T): T => {
    try {
      return work();
    } catch (error) {
      throw error instanceof FileProblem ? new FileProblem(`${shownAs(file, folder)}: ${error.message}.`) : error;
    }
  };
  const namedWriter = (file: string, writer: FileWriter): FileWriter => ({
    write: (data) => named(file, () => writer.write(data)),
    close: () => named(file, () => writer.close()),
  });
  return {
    read: (file) => files.read(file),
    bytes: (file) => files.bytes(file),
    kind: (path) => files.kind(path),
    list: (path) => files.list(path),
    write: (file, data) => named(file, () => files.write(file, data)),
    create: (file) =>
      namedWriter(
        file,
        named(file, () => files.create(file)),
      ),
  };
}
