/**
 * Requests of our own beside the protocol's: names and shapes only. An editor that knows none of them loses
 * nothing but the pages and the picture. The extension imports this file and no other of the server.
 */

/** Asked of the server. */
export const askServer = {
  /** ExplainCheckParams → Page | null. null: there is no such check. */
  explainCheck: 'sideport/explainCheck',
  /** NoteParams → Page | null. Every computed value of the note with inputs, method, source and cautions. */
  computedValues: 'sideport/computedValues',
  /** NoteParams → Page | null. The note as prose for the record, amendments of its set beside it. */
  prose: 'sideport/prose',
  /** PictureParams → Picture | null. null: not an operation, or nothing that could be drawn. */
  picture: 'sideport/picture',
  /** NewNoteParams → NewNote. A new note from the usual of the department whose set `folder` is in. */
  newNote: 'sideport/newNote',
} as const;

/** Asked of an editor that sent `files: true`: the server may run where it has no disk of its own. */
export const askEditor = {
  /** FolderParams → readonly FolderEntry[], what stands directly in the folder; none where there is no such folder. */
  listFolder: 'sideport/listFolder',
  /** FileParams → StoredFile | null. null: no such file. An error: it cannot be said now. */
  readFile: 'sideport/readFile',
  /** {} → string | null, the text of check-pages.json, which stands beside the server. */
  readCheckPages: 'sideport/readCheckPages',
  /** {} → string | null, the address of apart.js, which stands beside the server, for a worker to load. */
  apartAddress: 'sideport/apartAddress',
} as const;

/** Commands that code lenses and code actions may carry, only to an editor that lists them in its options. */
export const editorCommands = {
  /** Arguments: the id of the check. */
  explainCheck: 'sideport.explainCheck',
  /** Arguments: the address of the note. */
  showComputed: 'sideport.showComputed',
  /** Arguments: the address of the note. */
  showPicture: 'sideport.showPicture',
  /**
   * No arguments: asks for proposals at the cursor. An editor that has it asks by itself behind `field: ` and `- `, so
   * that no blank triggers: in VS Code a blank typed inside a value would leave the list of before in reach of Enter.
   */
  proposeAgain: 'sideport.proposeAgain',
} as const;

/** What an editor sends as `initializationOptions`; every part may be missing. */
export interface EditorOptions {
  /** The editor commands it can run. */
  readonly commands?: readonly string[];
  /** It answers the requests in `askEditor`. */
  readonly files?: boolean;
}

export interface ExplainCheckParams {
  readonly check: string;
}

export interface NoteParams {
  readonly uri: string;
}

export interface FolderParams {
  readonly folder: string;
}

export interface FolderEntry {
  readonly name: string;
  /** Links, whatever they lead to, and everything that is neither file nor folder are `other`. */
  readonly kind: 'file' | 'folder' | 'other';
}

export interface FileParams {
  readonly uri: string;
}

export interface StoredFile {
  /** As stored, a byte order mark included; null: the file is not text in UTF-8. */
  readonly text: string | null;
}

export interface NewNoteParams {
  /** Address of the folder the note is to stand in. */
  readonly folder: string;
  /** The editor's local date, `YYYY-MM-DD`. */
  readonly today: string;
}

export interface NewNote {
  /** A snippet with numbered places, in the protocol's snippet grammar. */
  readonly snippet: string;
  /** A file name that is free in the folder. */
  readonly fileName: string;
}

export interface Page {
  readonly title: string;
  readonly markdown: string;
}

export interface PictureParams {
  readonly uri: string;
  /** Where the cursor stands (zero-based, UTF-16), so that the part being written is emphasised. */
  readonly line: number;
  readonly character: number;
}

export interface Picture {
  readonly drawings: readonly Drawing[];
  readonly styles: PictureStyles;
}

/** Style sheets for a page that decides itself between light and dark. */
export interface PictureStyles {
  /** The shapes and the colours of a light page; the drawings carry no style of their own. */
  readonly all: string;
  /** Declarations of the colours of a light and of a dark page, to stand within a rule. */
  readonly light: string;
  readonly dark: string;
}

export interface Drawing {
  /** The eye, then the astigmatism. */
  readonly kind: 'eye' | 'astigmatism';
  readonly title: string;
  readonly svg: string;
  readonly marks: readonly PictureMark[];
}

export interface PictureMark {
  /** The id of the mark's element in the drawing. */
  readonly id: string;
  /** Where the mark stands in the note: zero-based line and UTF-16 character. Null where the note gives no place. */
  readonly at: { readonly line: number; readonly character: number } | null;
}
