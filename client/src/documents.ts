/** The language of a note and of a department file, as the manifest names them. */
export const languages = { note: 'opnote', department: 'opnote-department' } as const;

export const documentSelector = Object.values(languages).map((language) => ({ language }));

export function isChecked(document: { readonly languageId: string } | undefined): boolean {
  return document !== undefined && documentSelector.some(({ language }) => language === document.languageId);
}
