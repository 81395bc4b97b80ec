/** SHA-256 of a content, for comparing it with another. */
export function contentHash(content: string | Uint8Array): string {
  // Loaded when first needed: a command on a few notes compares no contents and should not wait for it.
  return process.getBuiltinModule('node:crypto').hash('sha256', content);
}
