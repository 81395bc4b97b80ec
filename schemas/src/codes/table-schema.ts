import * as z from 'zod';

z.config({ jitless: true });

/** How well a code is known: `seen` in a named source, quoted second-hand, or written from memory. */
const status = z.enum(['seen', 'second-hand', 'from memory', 'confirmed locally']);

const code = z.strictObject({
  /** What the code stands for; the rules name codes by this key. */
  key: z.string().min(1),
  right: z.string().min(1),
  left: z.string().min(1),
  title: z.string().min(1),
  status,
  source: z.string().optional(),
});

/** The codes of one system that the rules can suggest. A department may replace any of them by its key. */
export const codeTable = z.strictObject({
  system: z.string().min(1),
  edition: z.string().min(1),
  terms: z.string(),
  codes: z.array(code),
});

export type CodeTable = z.infer<typeof codeTable>;
export type CodeEntry = CodeTable['codes'][number];
