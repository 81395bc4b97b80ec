import { fileURLToPath } from 'node:url';
import type { TestProject } from 'vitest/node';
import { startEditorServer } from './editor-server.ts';

declare module 'vitest' {
  interface ProvidedContext {
    readonly editor: { readonly authority: string; readonly folders: string };
  }
}

export default async function startEditor(project: TestProject): Promise<() => void> {
  const vsix = fileURLToPath(new URL('../../../client/sideport.vsix', import.meta.url));
  const server = await startEditorServer(vsix);
  project.provide('editor', { authority: server.authority, folders: server.folders });
  return () => server.stop();
}
