import { describe, expect, test } from 'vitest';
import { validateXML } from 'xmllint-wasm';
import { writeCheckstyle } from '../../server/src/note/reports/checkstyle.ts';
import { writeJunit } from '../../server/src/note/reports/junit.ts';
import { escapeXml } from '../../server/src/note/reports/xml.ts';
import { EXAMPLE, OPTIONS } from './example.ts';
import { CHECKSTYLE_SUBSET, JUNIT_SUBSET } from './schemas.ts';

async function faults(xml: string, schema: string): Promise<readonly string[]> {
  const result = await validateXML({
    xml: [{ fileName: 'report.xml', contents: xml }],
    schema: [{ fileName: 'schema.xsd', contents: schema }],
  });
  return result.errors.map((fault) => fault.message);
}

describe('test report', () => {
  const report = writeJunit(EXAMPLE, OPTIONS);

  test('is valid, and so is the report of no notes', async () => {
    expect(await faults(report, JUNIT_SUBSET)).toEqual([]);
    expect(await faults(writeJunit([], OPTIONS), JUNIT_SUBSET)).toEqual([]);
  });

  test.each([
    ['a suite without a name', / name="notes\/a[^"]*"/],
    ['a missing count', / failures="2"/],
    ['a case without a name', / name="no remarks"/],
  ])('%s is rejected', async (_what, part) => {
    expect(await faults(report.replace(part, ''), JUNIT_SUBSET)).not.toEqual([]);
  });

  test('an unescaped sign is rejected', async () => {
    expect(await faults(report.replace('&lt;once&gt;', '<once>'), JUNIT_SUBSET)).not.toEqual([]);
  });

  test('counts remarks at the fail level as failures and keeps the words of the others', () => {
    expect(report).toContain('<testsuites name="sideport check" tests="6" failures="3" errors="0">');
    const strict = writeJunit(EXAMPLE, { ...OPTIONS, failOn: 'warning' });
    expect(strict).toContain('<testsuites name="sideport check" tests="6" failures="4" errors="0">');
    expect(writeJunit(EXAMPLE, { ...OPTIONS, failOn: 'never' })).not.toContain('<failure');
    expect(report).toContain('Write mm.');
    expect(report).toContain('<testcase name="no remarks" classname="notes/silent.opnote.yaml"/>');
  });
});

describe('checkstyle report', () => {
  const report = writeCheckstyle(EXAMPLE);

  test('is valid, and so is the report of no notes', async () => {
    expect(await faults(report, CHECKSTYLE_SUBSET)).toEqual([]);
    expect(await faults(writeCheckstyle([]), CHECKSTYLE_SUBSET)).toEqual([]);
  });

  test.each([
    ['line 0', / line="81"/, ' line="0"'],
    ['an unknown severity', / severity="warning"/, ' severity="fatal"'],
    ['a missing message', / message="Write mm\."/, ''],
  ])('%s is rejected', async (_what, part, put) => {
    expect(await faults(report.replace(part, put), CHECKSTYLE_SUBSET)).not.toEqual([]);
  });
});

test('what XML cannot hold is replaced, and everything else comes back', () => {
  expect(escapeXml('a\u0000b\uD800c\uFFFE')).toBe('a\uFFFDb\uFFFDc\uFFFD');
  expect(escapeXml('<&> "å" 👁')).toBe('&lt;&amp;&gt; &quot;å&quot; 👁');
});
