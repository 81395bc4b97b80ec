/** Settings of the editor's own dictation, as far as they decide where words go. */
export interface DictationSettings {
  /** The model that turns speech into text. */
  readonly model: string | undefined;
  /** By name, every switch of the dictation that is on. */
  readonly switches: readonly string[];
  /** The editor runs in a browser. */
  readonly browser: boolean;
}

/** Models that are known to run on this machine begin so; of others nothing is known. */
const LOCAL = /^(?:nemotron|local|on-?device)/i;
const REWRITES = /cleanup|clean-up|llm|rewrite/i;

/** What would leave the machine or be rewritten, each a sentence; none where nothing is known to. */
export function whatLeaves({ model, switches, browser }: DictationSettings): readonly string[] {
  const said: string[] = [];
  if (browser) said.push('In a browser, what you say is sent to a service on the network to be turned into text.');
  else if (model !== undefined && !LOCAL.test(model)) {
    said.push(
      `What you say is sent to a service on the network to be turned into text (“dictation.model” is “${model}”).`,
    );
  }
  const rewriting = switches.filter((name) => REWRITES.test(name));
  if (rewriting.length > 0) {
    said.push(
      `The text is sent to a language model, which rewrites it (“${rewriting.join('”, “')}” is on). Numbers and denials may change without a trace.`,
    );
  }
  return said;
}

/** The switches that let a language model rewrite what was said. */
export function rewritingSwitches(switches: readonly string[]): readonly string[] {
  return switches.filter((name) => REWRITES.test(name));
}

/** How dictation is started where the editor has none of its own. */
export function systemDictation(platform: string): string {
  if (platform === 'win32') return 'Press Windows+H to dictate.';
  if (platform === 'darwin') return 'Press the microphone key, or Control twice, to dictate.';
  return 'Start the dictation of your operating system.';
}
