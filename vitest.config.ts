import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  resolve: {
    // The browser build of yaml reads no process.env while it parses; it is the build that ships.
    alias: [
      { find: /^yaml$/, replacement: fileURLToPath(new URL('node_modules/yaml/browser/index.js', import.meta.url)) },
    ],
  },
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['**/node_modules/**', 'tests/editor/**'],
    setupFiles: ['tests/quiet-console.ts'],
    testTimeout: 30_000,
  },
});
