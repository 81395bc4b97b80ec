import type { Connection } from 'vscode-languageserver';

/** What a surgeon can choose, for each folder. */
export interface NoteSettings {
  readonly besideLines: boolean;
  readonly aboveSections: boolean;
}

const USUAL: NoteSettings = { besideLines: true, aboveSections: true };

/** The settings of each note as the editor has them, asked for once until they change. */
export class Settings {
  readonly #connection: Connection;
  readonly #known = new Map<string, Promise<NoteSettings>>();
  canAsk = false;

  constructor(connection: Connection) {
    this.#connection = connection;
  }

  of(uri: string): Promise<NoteSettings> {
    if (!this.canAsk) return Promise.resolve(USUAL);
    let known = this.#known.get(uri);
    if (known === undefined) {
      known = this.#ask(uri);
      this.#known.set(uri, known);
    }
    return known;
  }

  forget(uri?: string): void {
    if (uri === undefined) this.#known.clear();
    else this.#known.delete(uri);
  }

  async #ask(uri: string): Promise<NoteSettings> {
    const section = 'sideport.computedValues';
    const found: unknown = await this.#connection.workspace
      .getConfiguration({ scopeUri: uri, section })
      .catch(() => undefined);
    if (typeof found !== 'object' || found === null) return USUAL;
    return {
      besideLines: !('besideLines' in found && found.besideLines === false),
      aboveSections: !('aboveSections' in found && found.aboveSections === false),
    };
  }
}
