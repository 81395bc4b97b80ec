import type { ReportedNote, ReportOptions } from '../../note/reports/report-input.ts';

/** Reports that build machines read. */
export type BuildReport = 'sarif' | 'junit' | 'github' | 'gitlab' | 'checkstyle';

/** Writes such a report; what it says of the checks themselves comes from their own descriptions. */
export async function buildReport(
  name: BuildReport,
  notes: readonly ReportedNote[],
  failOn: ReportOptions['failOn'],
): Promise<string> {
  const options = await optionsOf(failOn);
  switch (name) {
    case 'sarif':
      return (await import('../../note/reports/sarif.ts')).writeSarif(notes, options);
    case 'junit':
      return (await import('../../note/reports/junit.ts')).writeJunit(notes, options);
    case 'github':
      return (await import('../../note/reports/github-commands.ts')).writeGithubCommands(notes);
    case 'gitlab':
      return (await import('../../note/reports/gitlab-code-quality.ts')).writeGitlabCodeQuality(notes, options);
    case 'checkstyle':
      return (await import('../../note/reports/checkstyle.ts')).writeCheckstyle(notes);
    default:
      return name satisfies never;
  }
}

/** Faults of writing cannot be allowed either, but are not grave. */
const ORDINARY: readonly string[] = ['writing', 'department file'];

async function optionsOf(failOn: ReportOptions['failOn']): Promise<ReportOptions> {
  const [{ knownChecks }, { allAbouts }, { version }] = await Promise.all([
    import('../../note/checks/known-checks.ts'),
    import('../../note/checks/all-abouts.ts'),
    import('../../../package.json'),
  ]);
  return {
    version,
    failOn,
    checks: knownChecks.map(({ id, summary, allowable, group }) => {
      const about = allAbouts[id]?.();
      const page = about === undefined ? {} : { why: about.why, advice: about.whatToDo };
      return { id, summary, ...page, gravest: !allowable && !ORDINARY.includes(group) };
    }),
  };
}
