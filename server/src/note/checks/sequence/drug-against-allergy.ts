import type { Field, Operation } from '@sideport/schemas';
import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';

const SEVERE_TO_PENICILLIN =
  /(?:penicill|amoxi|ampicill|flucloxa).*(?:anaphyl|severe|shock|angio|airway)|(?:anaphyl|severe|shock|angio|airway).*(?:penicill|amoxi|ampicill|flucloxa)/iu;

/** Drugs that belong together: an allergy to one speaks against the others. */
const families: readonly {
  readonly name: string;
  readonly allergy: RegExp;
  readonly drug: RegExp;
  readonly same: boolean;
}[] = [
  { name: 'a cephalosporin', allergy: /cef|ceph/iu, drug: /cef|ceph/iu, same: true },
  // Cefuroxime is usual after a mere rash; the side chains differ.
  { name: 'a cephalosporin', allergy: SEVERE_TO_PENICILLIN, drug: /cef|ceph/iu, same: false },
  { name: 'a quinolone', allergy: /quinolon|floxacin/iu, drug: /floxacin/iu, same: true },
  {
    name: 'an aminoglycoside',
    allergy: /aminoglyco|gentamic|tobramyc|neomyc/iu,
    drug: /gentamic|tobramyc|neomyc/iu,
    same: true,
  },
  {
    name: 'a sulfonamide',
    allergy: /sul(?:f|ph)(?:on|a\b|a |adi|ameth|asal)/iu,
    drug: /acetazolam|dorzolam|brinzolam/iu,
    same: false,
  },
  { name: 'chloramphenicol', allergy: /chloramphen/iu, drug: /chloramphen/iu, same: true },
  { name: 'iodine', allergy: /iodin|povidone/iu, drug: /iodin/iu, same: true },
  { name: 'chlorhexidine', allergy: /chlorhex/iu, drug: /chlorhex/iu, same: true },
  {
    name: 'a local anaesthetic',
    allergy: /li[dg]n?ocain|bupivacain|local anaesth/iu,
    drug: /li[dg]n?ocain|bupivacain/iu,
    same: true,
  },
];

export const drugAgainstAllergy = operationCheck({
  id: 'drug-against-allergy',
  group: 'sequence and consequence',
  summary: 'A drug was given, or prescribed, to which an allergy is recorded.',
  severity: 'error',
  allowable: true,
  run: (note, say) => {
    for (const allergy of note.patient?.allergies?.items ?? []) {
      const given = drugsOf(note);
      const clash = families
        .filter((family) => family.allergy.test(allergy.value))
        .flatMap((family) => given.filter(({ value }) => family.drug.test(value)).map((drug) => ({ family, drug })))[0];
      if (clash === undefined) continue;
      const { family, drug } = clash;
      say({
        at: drug,
        severity: family.same ? 'error' : 'warning',
        message: family.same
          ? `Allergy: ${drug.text} is recorded, but the patient is allergic to ${allergy.text}.`
          : `Allergy: ${drug.text} is ${family.name}, and the patient is allergic to ${allergy.text}, with which it can cross-react. Was that weighed?`,
        related: [related(`allergy: ${allergy.text}`, allergy)],
      });
    }
  },
});

export const aboutDrugAgainstAllergy: About = () => ({
  why: 'Anaphylaxis kills; even when nothing happened, the next team has to know.',
  whatToDo: 'Correct allergy or drug. If it was given knowingly, say so with the reason and allow the remark.',
  source: 'WHO Surgical Safety Checklist 2009 (known allergy); cross-reactions from memory of the literature',
  since: '1.0',
  faulty: { note: 'patient:\n  allergies:\n    - cefuroxime' },
  sound: { note: 'patient:\n  allergies:\n    - latex' },
});

function drugsOf({ drugs, anaesthesia, antisepsis, 'after-care': care }: Operation): Field<string>[] {
  return [
    ...(drugs?.items.map(({ drug }) => drug) ?? []),
    anaesthesia?.drug,
    antisepsis?.agent,
    ...(care?.drops?.items.map(({ drug }) => drug) ?? []),
  ].filter((field) => field !== undefined);
}
