import { calculation } from '../calculation.ts';
import { choice } from '../fields.ts';
import { found, refused } from '../outcome.ts';

/** Three facts of the operation; null is "not recorded". */
export interface CapsuleFacts {
  readonly posteriorCapsuleTorn: boolean | null;
  readonly zonuleRuptured: boolean | null;
  readonly vitreousProlapsed: boolean | null;
}

const FACT = (label: string) => choice(label, [true, false, null]);

export const posteriorCapsuleRupture = calculation<CapsuleFacts, boolean>({
  name: 'posterior-capsule-rupture',
  topic: 'Eye',
  definition: 'Whether the operation counts as posterior capsule rupture in the national audit.',
  inputs: {
    posteriorCapsuleTorn: FACT('posterior capsule torn'),
    zonuleRuptured: FACT('zonule ruptured'),
    vitreousProlapsed: FACT('vitreous prolapsed'),
  },
  unit: '',
  domain: 'Zonule rupture without vitreous prolapse does not count. A fact that is not recorded is not taken as no.',
  method: 'posterior capsule torn, with or without vitreous prolapse, or zonule ruptured with vitreous prolapse',
  source: { citation: 'UK national cataract audit, definition', status: 'seen' },
  example: {
    input: { posteriorCapsuleTorn: false, zonuleRuptured: true, vitreousProlapsed: false },
    gives: false,
  },
  compute: ({ posteriorCapsuleTorn, zonuleRuptured, vitreousProlapsed }) => {
    if (posteriorCapsuleTorn === true || (zonuleRuptured === true && vitreousProlapsed === true)) return found(true);
    if (posteriorCapsuleTorn === null) return refused('whether the posterior capsule was torn is not recorded');
    if (zonuleRuptured === false || vitreousProlapsed === false)
      return found(
        false,
        zonuleRuptured === false && vitreousProlapsed === true
          ? ['Vitreous prolapsed with capsule and zonule recorded as intact: one of the three facts is in doubt.']
          : [],
      );
    return refused(
      zonuleRuptured === null
        ? 'whether the zonule ruptured is not recorded'
        : 'whether vitreous prolapsed is not recorded',
    );
  },
});
