import { id, list, quantity, section, text, value, word } from '../fields/field.ts';
import { yesNo } from '../notation/plain.ts';
import { ringSize } from '../notation/ring-size.ts';
import { site } from '../notation/site.ts';
import {
  anteriorCapsuleStates,
  bagOrSulcus,
  capsuleParts,
  posteriorCapsuleStates,
  ringKinds,
  ringReasons,
  ringResults,
  ringTimes,
  vitrectomyApproaches,
  vitreousStates,
  zonuleStates,
} from '../vocabulary/outcome.ts';

const practice = 'common practice, no source';

export const capsuleState = section(
  {
    label: 'State of the capsule',
    meaning: 'Facts at the end of lens removal: capsule, zonule and vitreous. The audit flag is computed from them.',
    source: 'RCS Good Surgical Practice 2014, 1.3 (findings); UK national cataract audit definition',
    spoken: ['capsule'],
  },
  {
    anterior: word(anteriorCapsuleStates, { label: 'Anterior capsule', meaning: 'Intact or torn.', example: 'intact' }),
    posterior: word(posteriorCapsuleStates, {
      label: 'Posterior capsule',
      meaning: 'Intact or torn.',
      example: 'intact',
    }),
    zonule: word(zonuleStates, { label: 'Zonule', meaning: 'Intact, weak or ruptured.', example: 'intact' }),
    'zonule-extent': quantity('clock hours', {
      label: 'Extent',
      meaning: 'Over how many clock hours the zonule is ruptured.',
      example: '2 clock hours',
      possible: [0, 12],
    }),
    'zonule-at': value(site, {
      label: 'Middle of the zonular defect',
      meaning: 'Where the zonule is weak or ruptured.',
      example: 'inferotemporal',
    }),
    vitreous: word(vitreousStates, {
      label: 'Vitreous',
      meaning: 'Whether vitreous came forward.',
      example: 'not prolapsed',
    }),
    'vitreous-in-wound': value(yesNo, {
      label: 'Vitreous in a wound at the end',
      meaning: 'Whether a strand was left.',
      example: 'no',
    }),
    before: list(
      {
        label: 'Already so before the operation',
        meaning: 'What was torn, ruptured or prolapsed when the operation began: it is no complication of it.',
        source: practice,
      },
      word(capsuleParts, { label: 'Part of the capsule', meaning: 'One part.', example: 'zonule' }),
    ),
    text: text({ label: 'Capsule in words', meaning: 'Account of what was seen.' }),
  },
);

export const vitrectomy = section(
  {
    label: 'Vitrectomy',
    meaning: 'Vitrectomy done in this operation, or not done.',
    says: ['not done', 'none'],
    source: 'RCS Good Surgical Practice 2014, 1.3 (extra procedure and the reason)',
    spoken: ['vitrectomy'],
  },
  {
    approach: word(vitrectomyApproaches, {
      label: 'Approach',
      meaning: 'Anterior or through the pars plana.',
      example: 'anterior',
    }),
    stain: text({
      label: 'Stain',
      meaning: 'What made the vitreous visible, or none.',
      example: 'triamcinolone',
      says: ['none'],
    }),
    complete: value(yesNo, {
      label: 'Chamber free of vitreous',
      meaning: 'Whether the anterior chamber was cleared.',
      example: 'yes',
    }),
    text: text({ label: 'Vitrectomy in words', meaning: 'What the fields cannot say.' }),
  },
);

export const ring = section(
  {
    label: 'Tension ring',
    meaning: 'Whether a capsular tension ring went in, which, why and when.',
    source: 'RCS Good Surgical Practice 2014, 1.3 (extra procedure and the reason)',
    spoken: ['tension ring', 'capsular tension ring'],
  },
  {
    used: value(yesNo, { label: 'Used', meaning: 'Whether a ring was implanted.', example: 'yes' }),
    kind: word(ringKinds, { label: 'Kind', meaning: 'Which kind of ring.', example: 'tension ring' }),
    size: value(ringSize, { label: 'Size', meaning: 'Free and compressed diameter.', example: '13/11 mm' }),
    reason: list(
      { label: 'Reason', meaning: 'Why it was needed.' },
      word(ringReasons, { label: 'Reason', meaning: 'One reason.', example: 'weak zonule' }),
    ),
    inserted: word(ringTimes, {
      label: 'Inserted',
      meaning: 'At which point of the operation.',
      example: 'after cortex removal',
    }),
    placed: word(bagOrSulcus, { label: 'Placed', meaning: 'Where it lies.', example: 'capsular bag' }),
    result: word(ringResults, { label: 'Result', meaning: 'What it achieved.', example: 'bag round and centred' }),
    serial: id({
      label: 'Serial or lot number',
      meaning: 'Identification of the ring.',
      example: '50311',
      source: practice,
    }),
  },
);
