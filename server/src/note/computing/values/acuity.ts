import { lettersGained, linesGained } from '../../calculations/acuity/gain.ts';
import { acuityDecimal, acuityLetters } from '../../calculations/acuity/logmar.ts';
import { ACUITY_KINDS, logmarOf, measuredAcuity, type AcuityFields } from '../acuities.ts';
import type { Definition } from '../definition.ts';
import type { FollowUpFacts } from '../follow-up-facts.ts';
import { withCautions } from '../known.ts';
import type { OperationFacts } from '../operation-facts.ts';
import { result, spotOf, type Result } from '../result.ts';

const names = ['acuity-logmar', 'acuity-decimal', 'acuity-letters'] as const;

function acuityResults(acuities: AcuityFields | undefined): readonly Result[] {
  return ACUITY_KINDS.flatMap((kind): readonly Result[] => {
    const field = acuities?.[kind];
    if (field === undefined) return [];
    const at = spotOf(field);
    const inputs = { [`${kind}-acuity`]: { ok: true, value: field.text, unit: '' } as const };
    const acuity = measuredAcuity(field.value);
    const logmar = logmarOf(field, 'the acuity');
    return [
      { name: 'acuity-logmar', at, inputs, outcome: logmar, inline: field.value.kind !== 'logmar' },
      ...(acuity === undefined
        ? []
        : [
            result('acuity-decimal', at, inputs, () => acuityDecimal({ acuity })),
            result('acuity-letters', at, inputs, () => acuityLetters({ acuity })),
          ]),
    ];
  });
}

export const acuityBefore: Definition<OperationFacts> = {
  names,
  compute: ({ note }) => acuityResults(note.preop?.acuity),
};

export const acuityAtVisit: Definition<FollowUpFacts> = {
  names,
  compute: ({ note }) => acuityResults(note.acuity),
};

/** Lines and letters gained, each kind of acuity against the same kind before the operation. */
export const acuityGained: Definition<FollowUpFacts> = {
  names: ['lines-gained', 'letters-gained'],
  compute: ({ note, operation }) =>
    ACUITY_KINDS.flatMap((kind): readonly Result[] => {
      const field = note.acuity?.[kind];
      const earlier = operation?.note.preop?.acuity?.[kind];
      // A pinhole acuity is often taken at one of the two examinations only.
      const aside = kind === 'pinhole' && earlier === undefined;
      if (field === undefined || operation === undefined || aside) return [];
      const before = logmarOf(earlier, `the ${kind} acuity before the operation`);
      const after = logmarOf(field, `the ${kind} acuity`);
      const byScheme = [earlier, field].some((acuity) => acuity?.value.kind === 'category');
      const cautions = byScheme
        ? ['One of the two is a category (counting fingers or less): the gain rests on a scheme, not a measurement.']
        : [];
      const inputs = { before, after };
      return [
        result('lines-gained', spotOf(field), inputs, (given) =>
          withCautions(linesGained({ beforeLogmar: given.before, afterLogmar: given.after }), cautions),
        ),
        result('letters-gained', spotOf(field), inputs, (given) =>
          withCautions(lettersGained({ beforeLogmar: given.before, afterLogmar: given.after }), cautions),
        ),
      ];
    }),
};
