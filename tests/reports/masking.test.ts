import { describe, expect, test } from 'vitest';
import { writeCheckstyle } from '../../server/src/note/reports/checkstyle.ts';
import { writeGithubCommands } from '../../server/src/note/reports/github-commands.ts';
import { writeGitlabCodeQuality } from '../../server/src/note/reports/gitlab-code-quality.ts';
import { writeJunit } from '../../server/src/note/reports/junit.ts';
import { maskIdentifiers } from '../../server/src/note/reports/mask-identifiers.ts';
import { sortReport } from '../../server/src/note/reports/report-input.ts';
import { writeSarif } from '../../server/src/note/reports/sarif.ts';
import { EXAMPLE, OPTIONS } from './example.ts';

test.each([
  ['NHS 943 476 5919 in the text', 'NHS 943 *** **** in the text'],
  ['NHS 9434765919', 'NHS 943*******'],
  ['ssn 123-45-6789', 'ssn 123-**-****'],
  ['call +44 20 7946 0000 today', 'call +44 2* **** **** today'],
  ['hospital number H1234567', 'hospital number H123****'],
  ['write to a.elm@example.org.', 'write to ***@***.'],
  ['Mrs Elm and Dr. Åse Birch-Oak came', 'Mrs *** and Dr. *** came'],
])('%s', (text, masked) => {
  expect(maskIdentifiers(text)).toBe(masked);
});

test.each([
  'The lens implanted has +4.0 D, the plan says -14.25 / -1.50 x 95.',
  'The operation is dated 2026-03-02 08:45, the follow-up 2026-03-01.',
  'Axial length 30.42 mm, 43.25 D @ 5, vacuum 380 mmHg, bottle 70 cm.',
  'It is "3 mm toward 3 o\'clock" in note OP-2026-0412.',
  'Misspelt Drain field',
])('clinical values stay: %s', (text) => {
  expect(maskIdentifiers(text)).toBe(text);
});

describe('every report for a build machine', () => {
  const reports = {
    sarif: writeSarif(EXAMPLE, OPTIONS),
    junit: writeJunit(EXAMPLE, OPTIONS),
    checkstyle: writeCheckstyle(EXAMPLE),
    github: writeGithubCommands(EXAMPLE),
    gitlab: writeGitlabCodeQuality(EXAMPLE, OPTIONS),
  };

  test.each(Object.entries(reports))('%s shows no identifier', (_format, text) => {
    expect(text).toContain('943 *** ****');
    expect(text).not.toMatch(/5919|Elm/);
  });

  test('the order in which notes arrive changes nothing', () => {
    const turned = EXAMPLE.map((note) => ({ ...note, remarks: note.remarks.toReversed() })).toReversed();
    expect(writeSarif(turned, OPTIONS)).toBe(reports.sarif);
    expect(writeJunit(turned, OPTIONS)).toBe(reports.junit);
    expect(writeCheckstyle(turned)).toBe(reports.checkstyle);
    expect(writeGithubCommands(turned)).toBe(reports.github);
    expect(writeGitlabCodeQuality(turned, OPTIONS)).toBe(reports.gitlab);
    expect(sortReport(turned)).toEqual(sortReport(EXAMPLE));
  });
});
