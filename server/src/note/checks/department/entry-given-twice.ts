import type { Department, Field } from '@sideport/schemas';
import { departmentCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';

export const entryGivenTwice = departmentCheck({
  id: 'entry-given-twice',
  group: 'department file',
  summary: 'A person, a lens, a device identifier or a check is listed twice.',
  severity: 'error',
  allowable: false,
  run: (department, say) => {
    for (const { what, fields } of listsOf(department)) {
      const met = new Map<string, Field<string>>();
      for (const field of fields) {
        const before = met.get(field.key);
        if (before === undefined) met.set(field.key, field.field);
        else
          say({
            at: field.field,
            message: `${what}: ${field.field.text} is listed twice.`,
            related: [related('listed before', before)],
          });
      }
    }
  },
});

export const aboutEntryGivenTwice: About = () => ({
  why: 'Only one of the two entries is used, and nobody can tell which.',
  whatToDo: 'Delete one of them.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: {
    base: 'department',
    note: 'checks:\n  - check: signed-late\n    severity: info\n    because: notes are signed in another system\n  - check: signed-late\n    severity: off\n    because: notes are signed in another system',
  },
  sound: {
    base: 'department',
    note: 'checks:\n  - check: signed-late\n    severity: info\n    because: notes are signed in another system',
  },
});

interface Listed {
  readonly key: string;
  readonly field: Field<string>;
}

function keyed(field: Field<string> | undefined, key = field?.value): Listed[] {
  return field === undefined || key === undefined ? [] : [{ key, field }];
}

function listsOf({
  staff,
  lenses,
  checks,
}: Department): { readonly what: string; readonly fields: readonly Listed[] }[] {
  const lensItems = lenses?.items ?? [];
  return [
    { what: 'Staff', fields: (staff?.items ?? []).flatMap(({ ref }) => keyed(ref)) },
    {
      what: 'Lenses',
      fields: lensItems.flatMap(({ maker, model }) => keyed(model, `${maker?.value ?? ''} ${model?.value ?? ''}`)),
    },
    { what: 'Device identifiers', fields: lensItems.flatMap((lens) => keyed(lens['device-identifier'])) },
    { what: 'Checks', fields: (checks?.items ?? []).flatMap(({ check }) => keyed(check)) },
  ];
}
