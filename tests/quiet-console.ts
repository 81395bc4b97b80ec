import { afterAll, beforeAll, vi } from 'vitest';

// A call to the console in product code would corrupt a protocol stream or a report: any call fails the test file.
const calls: string[] = [];
beforeAll(() => {
  for (const method of ['log', 'info', 'warn', 'error', 'debug'] as const) {
    vi.spyOn(console, method).mockImplementation((...parts: unknown[]) => {
      calls.push(`console.${method}(${parts.map(String).join(' ')})`);
    });
  }
});
afterAll(() => {
  vi.restoreAllMocks();
  if (calls.length > 0) throw new Error(`The console was used:\n${calls.join('\n')}`);
});
