import { afterEach, expect, test, vi } from 'vitest';
import { documentSelector, isChecked, isNote } from '../../client/src/documents.ts';

const workspace = vi.hoisted(() => ({ workspaceFolders: undefined as { uri: { scheme: string } }[] | undefined }));
vi.mock('vscode', () => ({ workspace }));
afterEach(() => (workspace.workspaceFolders = undefined));

const document = (scheme: string, languageId = 'opnote') => ({ languageId, uri: { scheme } });

test.each(['file', 'untitled', 'vscode-vfs', 'vscode-remote'])('a note in %s is checked', (scheme) => {
  expect(isChecked(document(scheme))).toBe(true);
  expect(documentSelector()).toContainEqual({ language: 'opnote', scheme });
  expect(documentSelector()).toContainEqual({ language: 'opnote-department', scheme });
});

test('a former version, as one side of a comparison shows it, is not checked', () => {
  expect(isChecked(document('git'))).toBe(false);
  expect(documentSelector().map(({ scheme }) => scheme)).not.toContain('git');
});

test('a folder on whatever kind of disk is checked once it is open', () => {
  expect(isChecked(document('memory'))).toBe(false);
  workspace.workspaceFolders = [{ uri: { scheme: 'memory' } }];
  expect(isChecked(document('memory'))).toBe(true);
});

test('other languages are left alone, and a department file is no note', () => {
  expect(isChecked(document('file', 'yaml'))).toBe(false);
  expect(isChecked(undefined)).toBe(false);
  expect([isChecked(document('file', 'opnote-department')), isNote(document('file', 'opnote-department'))]).toEqual([
    true,
    false,
  ]);
});
