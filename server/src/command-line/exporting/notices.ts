import type { Leaving } from '../../note/export/leaving.ts';
import type { RecordWriter } from './record-writer.ts';

/** So many files are named in one sentence; the rest are counted. */
const NAMED = 20;

/** Sentences for one file each, or one for all of them where no file may be named. */
interface Sentences {
  readonly files: { readonly file: string; readonly told: string }[];
  /** @param files how many there are, as “1 note” or “3 notes” */
  readonly together: (files: string) => string;
}

/**
 * What the person who exports must know of single notes: by file and count, never by content. Where identifiers are
 * taken out no file is named, for its name may hold one; `sideport check` names them.
 */
export class Notices {
  readonly #form: RecordWriter['form'];
  readonly #namesFiles: boolean;
  readonly #other: string[];
  readonly #seen = new Map<string, string>();
  readonly #unread: Sentences = {
    files: [],
    together: (files) => `Places of ${files} could not be read and are not among what was exported.`,
  };
  readonly #withoutId: Sentences = { files: [], together: (files) => `Without an id: ${files}. ${BY_ID}` };
  readonly #sameId: Sentences = { files: [], together: (files) => `With the id of another note: ${files}. ${BY_ID}` };
  readonly #withErrors: string[] = [];
  readonly #apart: string[] = [];
  readonly #unknown: string[] = [];

  constructor(options: {
    readonly form: RecordWriter['form'];
    readonly namesFiles: boolean;
    readonly problems: readonly string[];
  }) {
    this.#form = options.form;
    this.#namesFiles = options.namesFiles;
    this.#other = [...options.problems];
  }

  /** A sentence about something that could not be read at all. */
  problem(sentence: string): void {
    this.#other.push(sentence);
  }

  /** @param places how many could not be read */
  unread(file: string, places: number): void {
    if (places === 0) return;
    const told = `${places === 1 ? '1 place could not be read and is' : `${places} places could not be read and are`} not among what was exported.`;
    this.#unread.files.push({ file, told });
  }

  /** @param errors how many the checks of side and identity, and the reader, find in a final note */
  finalWithErrors(file: string, errors: number): void {
    if (errors > 0) this.#withErrors.push(`${file} (${errors})`);
  }

  get hasFinalWithErrors(): boolean {
    return this.#withErrors.length > 0;
  }

  /** Rows of tables are told apart by the id of the note alone. */
  id(file: string, kind: Leaving['kind'], id: string | undefined): void {
    if (this.#form !== 'tables') return;
    if (id === undefined) {
      this.#withoutId.files.push({ file, told: `it has no id. ${BY_ID}` });
      return;
    }
    const key = `${kind}\n${id}`;
    const first = this.#seen.get(key);
    if (first === undefined) this.#seen.set(key, file);
    else this.#sameId.files.push({ file, told: `it has the same id as ${first}. ${BY_ID}` });
  }

  /** An amendment whose operation or visit is not among the notes that are exported. */
  amendmentAlone(file: string, isInSet: boolean): void {
    if (this.#form !== 'records') (isInSet ? this.#apart : this.#unknown).push(file);
  }

  /** Sentences about what left all the same. */
  get remarks(): readonly string[] {
    const consequence =
      this.#form === 'tables'
        ? 'they stand in the table of amendments, and the column “amended” of those notes cannot tell of them'
        : 'they stand in no document';
    return [
      ...this.#listed('Amendments of notes that are not exported with them; they leave with those', this.#apart),
      ...this.#listed(
        `Amendments of notes that are not in their set; ${consequence}. A sideport.yaml in a folder above both makes one set of them`,
        this.#unknown,
      ),
      ...this.#listed(
        'Final notes with errors of side, identity, lens or reading, exported as they are written (errors in brackets; sideport check says what is wrong)',
        this.#withErrors,
      ),
    ];
  }

  /** Sentences about what could not be read or told apart. */
  get problems(): readonly string[] {
    return [...this.#other, ...[this.#unread, this.#withoutId, this.#sameId].flatMap((one) => this.#told(one))];
  }

  #told({ files, together }: Sentences): readonly string[] {
    if (files.length === 0) return [];
    if (this.#namesFiles) return files.map(({ file, told }) => `${file}: ${told} sideport check says more.`);
    return [`${together(counted(files.length))} sideport check names them.`];
  }

  #listed(what: string, files: readonly string[]): readonly string[] {
    if (files.length === 0) return [];
    if (!this.#namesFiles) return [`${what}: ${counted(files.length)}.`];
    const more = files.length > NAMED ? ` and ${files.length - NAMED} more` : '';
    return [`${what}: ${files.slice(0, NAMED).join(', ')}${more}.`];
  }
}

const BY_ID = 'Rows of the tables are told apart by the id alone: give each note one of its own.';

const counted = (notes: number): string => (notes === 1 ? '1 note' : `${notes} notes`);
