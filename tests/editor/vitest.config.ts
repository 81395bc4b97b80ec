import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

// The real editors are slow to start and share one server and one screen: one file after the other, no hurry.
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    include: ['tests/editor/**/*.test.ts'],
    globalSetup: ['tests/editor/support/start-editor.ts'],
    fileParallelism: false,
    // A busy machine may lose a key on its way to the browser; a fault of ours fails the second time too.
    retry: 1,
    testTimeout: 180_000,
    hookTimeout: 120_000,
  },
});
