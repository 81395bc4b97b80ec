import { describe, expect, it } from 'vitest';
import { allAbouts } from '../../server/src/note/checks/all-abouts.ts';
import { checkGroups, type Example } from '../../server/src/note/checks/check.ts';
import { runExample } from '../../server/src/note/checks/examples/run-example.ts';
import { checkById, knownChecks } from '../../server/src/note/checks/known-checks.ts';
import { said } from './support/said.ts';
import { variants } from './variants.ts';

function wordsOf(example: Example): string[] {
  return runExample(example).review.remarks.map(
    ({ severity, message, related }) =>
      `${severity}: ${message}${related.map((place) => `\n  - ${place.message}`).join('')}`,
  );
}

const spoken = new Map<string, string[]>();
for (const { id } of knownChecks) {
  const about = allAbouts[id]?.();
  if (about !== undefined && about.noExample === undefined) spoken.set(id, wordsOf(about.faulty));
}
for (const [id, example] of variants) spoken.get(id)?.push(...wordsOf(example));

describe('other grades and reasons', () => {
  it.each(variants)('%s', (id, example) => {
    expect(said(runExample(example))).toEqual([expect.stringMatching(new RegExp(`\\[${id}\\]$`, 'u'))]);
  });
});

describe('the messages, to be read by a surgeon', () => {
  it('are those of the golden list (renew: npx vitest run tests/checks/messages.test.ts -u, then read the difference)', async () => {
    const page = checkGroups.map((group) => {
      const ids = [...spoken.keys()].filter((id) => checkById(id)?.group === group).toSorted();
      return `# ${group}\n\n${ids.map((id) => `## ${id}\n\n${[...new Set(spoken.get(id))].join('\n')}\n`).join('\n')}`;
    });
    await expect(page.join('\n')).toMatchFileSnapshot('./messages.md');
  });

  it('speak no jargon of the writing format or of programming', () => {
    const jargon =
      /\b(?:yaml|zod|typescript|json|undefined|null|NaN|object Object|schema|node|scalar|mapping|array|string|boolean|parse[dr]?|token|regexp?|invalid|enum|expected type|property|index out)\b/iu;
    const all = [...spoken].flatMap(([id, messages]) =>
      messages.map((message) => `${id}: ${message.replace(/\w+\.opnote\.yaml/gu, '')}`),
    );
    expect(all.filter((message) => jargon.test(message))).toEqual([]);
  });

  it('are sentences of a length that can be read at a glance', () => {
    const long = [...spoken].flatMap(([id, messages]) =>
      messages.flatMap((message) => {
        const [first = ''] = message.split('\n');
        return first.length > 330 || !/^(?:error|warning|info): .*[.?:)”]$/su.test(first) ? [`${id}: ${first}`] : [];
      }),
    );
    expect(long).toEqual([]);
  });
});
