import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

interface Manifest {
  readonly capabilities: unknown;
  readonly contributes: {
    readonly languages: readonly { readonly id: string }[];
    readonly grammars: readonly { readonly language: string }[];
    readonly configurationDefaults: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
    readonly commands: readonly { readonly command: string; readonly icon?: string }[];
    readonly keybindings: readonly { readonly key: string; readonly command: string; readonly when: string }[];
  };
}

const path = fileURLToPath(new URL('../../client/package.json', import.meta.url));
const manifest: Manifest = JSON.parse(readFileSync(path, 'utf8'));
const { languages, grammars, configurationDefaults, commands, keybindings } = manifest.contributes;

test('notes and department files have languages of their own, and plain YAML is left alone', () => {
  expect(languages.map(({ id }) => id)).toEqual(['opnote', 'opnote-department']);
  expect(grammars.map(({ language }) => language)).toEqual(['opnote', 'opnote-department']);
  expect(Object.keys(configurationDefaults)).toEqual(['[opnote]', '[opnote-department]']);
});

test('it works in folders that are not trusted and in folders that are on no disk', () => {
  expect(manifest.capabilities).toEqual({ untrustedWorkspaces: { supported: true }, virtualWorkspaces: true });
});

test('in both languages Enter takes no suggestion that changes nothing, and adds no blanks', () => {
  for (const defaults of Object.values(configurationDefaults)) {
    expect(defaults).toMatchObject({ 'editor.acceptSuggestionOnEnter': 'smart', 'editor.autoIndent': 'none' });
  }
});

test('every command that a person sees has an icon', () => {
  expect(commands.filter(({ icon }) => icon === undefined)).toEqual([]);
});

test('a key works in notes only, and none is a letter that another keyboard needs AltGr for', () => {
  for (const { key, when } of keybindings) {
    expect(when).toContain('editorLangId == opnote');
    expect(key).not.toMatch(/ctrl\+alt\+[a-z]/);
  }
});
