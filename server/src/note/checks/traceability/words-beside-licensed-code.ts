import { textCheck, type About } from '../check.ts';

/** Systems whose titles nobody may keep without a licence of their owner. */
const OWNERS: Readonly<Record<string, string>> = { CPT: 'the American Medical Association' };

export const wordsBesideLicensedCode = textCheck({
  id: 'words-beside-licensed-code',
  group: 'traceability',
  summary: 'Words stand beside a code whose title may not be kept.',
  severity: 'warning',
  allowable: true,
  run: (reading, say) => {
    if (reading.kind !== 'operation') return;
    for (const { system, code, reason } of reading.note.codes?.items ?? []) {
      const owner = system === undefined ? undefined : OWNERS[system.value];
      if (owner === undefined || reason === undefined) continue;
      say({
        at: reason,
        message: `Code: words stand beside ${code?.value ?? 'a code'} of ${system?.value}. Its titles belong to ${owner} and may not be kept without a licence: write why the code was chosen, never its title.`,
      });
    }
  },
});

export const aboutWordsBesideLicensedCode: About = () => ({
  why: 'A title that was copied into the note is handed on with every export of it.',
  whatToDo: 'Take the title out. Where the words say why the code was chosen, allow the remark.',
  source: 'notice of the American Medical Association on CPT, as pages of Medicare contractors show it',
  since: '1.0',
  faulty: { note: 'codes:\n  - system: CPT\n    code: "66984"\n    reason: the title, word for word' },
  sound: { note: 'codes:\n  - system: CPT\n    code: "66984"' },
});
