/** SHA-256 of a text, for comparing contents. */
export function contentHash(text: string): string {
  // Loaded when first needed: a command on a few notes compares no contents and should not wait for it.
  return process.getBuiltinModule('node:crypto').hash('sha256', text);
}
