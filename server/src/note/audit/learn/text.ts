import { groupBy } from '../group-by.ts';
import type { ProposedConstant } from './constants.ts';
import type { ProposedEffect } from './incision-effects.ts';
import type { Learned } from './learn.ts';

const signed = (value: number): string => `${value < 0 ? '' : '+'}${value.toFixed(2)}`;

function effectLines(effect: ProposedEffect): readonly string[] {
  const { surgeon, site, widthMm, flatteningD, interval, eyes, missing, presentD, ellipse, torqueD, hotelling } =
    effect;
  return [
    `Surgeon ${surgeon}, ${site}, ${widthMm.toFixed(1)} mm: flattening ${flatteningD.toFixed(2)} D${interval === null ? '' : ` (95 % ${interval.low.toFixed(2)} to ${interval.high.toFixed(2)})`}, ${eyes} eyes, ${missing} missing; now ${presentD === null ? 'nothing' : `${presentD.toFixed(2)} D`}.`,
    `  Torque ${signed(torqueD)} D.${ellipse === null ? '' : ` 95 % ellipse of the centroid ${ellipse.semiMajorD.toFixed(2)} by ${ellipse.semiMinorD.toFixed(2)} D (half lengths, double-angle plane).`}${hotelling === null ? '' : ` Hotelling T² ${hotelling.t2.toFixed(1)}, p ${hotelling.p < 0.001 ? 'below 0.001' : hotelling.p.toFixed(3)}.`}`,
    ...effect.cautions.map((caution) => `  ${caution}`),
  ];
}

/** A0 and the surgeon factor are written to hundredths, as are the others: more would claim what eyes cannot show. */
const written = (value: number): string => value.toFixed(2);

function constantLines(proposal: ProposedConstant): readonly string[] {
  const { model, formula, constant, present, proposed, standardError, eyes, before, after, long } = proposal;
  return [
    `${model}, ${formula}: ${constant} ${written(proposed)}${standardError === null ? '' : ` (standard error ${standardError.toFixed(2)})`}, ${eyes} eyes; now ${present === null ? 'nothing' : written(present)}.`,
    ...(before === null
      ? []
      : [
          `  With the present constant: mean error ${signed(before.mean)} D, median absolute ${before.medianAbsolute.toFixed(2)} D.`,
        ]),
    ...(after === null
      ? []
      : [
          `  With the proposed one: mean error 0, SD ${(after.sd ?? 0).toFixed(2)} D, median absolute ${after.medianAbsolute.toFixed(2)} D.`,
        ]),
    ...(long.meanErrorD === null
      ? []
      : [`  It leaves ${long.eyes} eyes over 26 mm with a mean error of ${signed(long.meanErrorD)} D.`]),
    ...proposal.cautions.map((caution) => `  ${caution}`),
  ];
}

function effectEntries(effects: readonly ProposedEffect[]): string {
  const people = groupBy(effects, (effect) => effect.surgeon).map(([surgeon, own]) => {
    const entries = own.map(
      ({ widthMm, site, flatteningD, eyes, since }) =>
        `      - width: ${widthMm.toFixed(1)} mm\n        site: ${site}\n        flattening: ${flatteningD.toFixed(2)} D\n        eyes: ${eyes}\n        since: ${since}\n`,
    );
    return `  - ref: ${surgeon}\n    incision-effect:\n${entries.join('')}`;
  });
  return people.length === 0 ? '' : `staff:\n${people.join('')}`;
}

/** T2 shares its key with SRK/T and is left to the reader. */
function constantEntries(constants: readonly ProposedConstant[]): string {
  const models = groupBy(
    constants.filter(({ formula }) => formula !== 'T2'),
    ({ model }) => model,
  ).map(([model, own]) => {
    const lines = own.map(
      ({ constant, proposed, formula, eyes }) => `      ${constant}: ${written(proposed)} # ${formula}, ${eyes} eyes\n`,
    );
    return `  - model: ${model}\n    constants:\n${lines.join('')}`;
  });
  return models.length === 0 ? '' : `lenses:\n${models.join('')}`;
}

/** The proposals to read, and as lines that can be copied into the department file. */
export function learnedText(learned: Learned): string {
  const { effects, constants, setAside, cautions } = learned;
  return [
    'What the department file could say',
    '==================================',
    ...cautions.map((caution) => `- ${caution}`),
    '',
    'Incision effect',
    '---------------',
    ...(effects.length === 0
      ? ['No group of incisions has enough eyes with a keratometry after the operation.']
      : effects.flatMap(effectLines)),
    '',
    'Lens constants',
    '--------------',
    ...(constants.length === 0 ? ['No lens has enough eyes.'] : constants.flatMap(constantLines)),
    ...setAside.map(({ model, eyes, reason }) => `${model}: ${eyes} eyes set aside: ${reason}.`),
    '',
    'To copy after a look (only the lines that change)',
    '-------------------------------------------------',
    `${effectEntries(effects)}${constantEntries(constants)}`,
  ].join('\n');
}
