import { operationCheck, type About } from '../check.ts';
import { complicationOf, type ComplicationKind } from '../support/course.ts';
import type { Wording } from '../support/joined-text.ts';
import { mention, narrativeOf } from '../support/prose.ts';
import { related } from '../support/place.ts';
import { tornFacts } from '../support/torn.ts';

const told: readonly { readonly kinds: readonly ComplicationKind[]; readonly wording: Wording }[] = [
  {
    kinds: ['posterior capsule rupture'],
    wording: {
      hints: ['caps'],
      pattern:
        /\b(?:posterior caps\w+ (?:was |is )?(?:tear|tore|torn|ruptur\w+|broke\w*|hole)|caps\w+ (?:rupture|rent)|(?:tear|rupture|rent|hole) (?:of|in) the posterior caps\w+)\b/giu,
    },
  },
  {
    kinds: ['vitreous loss'],
    wording: {
      hints: ['vitreous'],
      pattern:
        /\b(?:vitreous (?:loss|prolapse[d]?|came forward|presented|(?:in|at|to) the (?:wound|chamber|anterior chamber))|lost vitreous)\b/giu,
    },
  },
  {
    kinds: ['zonular dialysis'],
    wording: {
      hints: ['zonul'],
      pattern: /\b(?:zonul\w+ (?:dialysis|dehiscence|ruptur\w+)|dialysis of the zonule)\b/giu,
    },
  },
  {
    kinds: ['anterior capsule tear'],
    wording: {
      hints: ['caps', 'radial', 'rhexis'],
      pattern: /\b(?:anterior caps\w+ tear|radial tear|rhexis (?:ran|tore) out|capsulotomy ran out)\b/giu,
    },
  },
  { kinds: ['iris prolapse'], wording: { hints: ['iris'], pattern: /\biris (?:prolapse[d]?|came out)\b/giu } },
  {
    kinds: ['lens fragment into vitreous', 'retained fragment'],
    wording: {
      hints: ['drop', 'fragment'],
      pattern: /\b(?:dropped (?:nucleus|fragment)|fragment (?:fell|sank|dropped))\b/giu,
    },
  },
  {
    kinds: ['Descemet detachment'],
    wording: { hints: ['descemet'], pattern: /\bdescemet\S* (?:detachment|tear|detached)\b/giu },
  },
  { kinds: ['hyphaema'], wording: { hints: ['hyph'], pattern: /\bhypha?ema\b/giu } },
  {
    kinds: ['corneal abrasion'],
    wording: { hints: ['abrasion', 'epithel'], pattern: /\b(?:corneal|epithelial) (?:abrasion|defect)\b/giu },
  },
  {
    kinds: ['lens damaged', 'lens exchanged'],
    wording: {
      hints: ['scratch', 'haptic', 'optic'],
      pattern:
        /\b(?:optic (?:was )?(?:scratched|cracked|torn)|scratched optic|haptic (?:was )?(?:torn|broken|broke|kinked|bent))\b/giu,
    },
  },
  { kinds: ['wound burn'], wording: { hints: ['burn'], pattern: /\b(?:wound|phaco) burn\b/giu } },
  {
    kinds: ['suprachoroidal haemorrhage'],
    wording: { hints: ['choroidal'], pattern: /\b(?:supra)?choroidal h(?:a)?emorrhage\b/giu },
  },
];

export const proseTellsOfComplication = operationCheck({
  id: 'prose-tells-of-complication',
  group: 'writing',
  summary: 'The text tells of a complication that the fields do not have.',
  severity: 'warning',
  allowable: true,
  run: (note, say, { reading }) => {
    const list = note.complications?.$ ?? note.$.said['complications'];
    if (list === undefined) return;
    const narrative = narrativeOf(reading);
    const facts = tornFacts(note);
    for (const { kinds, wording } of told) {
      if (
        complicationOf(note, ...kinds) !== undefined ||
        facts.some((fact) => fact.kinds.some((kind) => kinds.includes(kind)))
      )
        continue;
      const found = mention(narrative, wording);
      if (found === undefined) continue;
      say({
        at: found.place,
        message: `The text says “${found.text}”, but “${kinds[0]}” is not among the complications. Did it happen?`,
        related: [related('the complications', list)],
      });
    }
  },
});

export const aboutProseTellsOfComplication: About = () => ({
  why: 'Only the fields are counted; a complication in prose is lost to audit, codes and the next surgeon.',
  whatToDo: 'Read the sentence. List the complication if it happened, or reword or allow it if it did not.',
  source: 'UK national cataract audit; common practice',
  since: '1.0',
  faulty: { note: 'findings: soft nucleus, iris prolapsed through the main wound' },
  sound: { note: 'findings: soft nucleus, no iris prolapse' },
});
