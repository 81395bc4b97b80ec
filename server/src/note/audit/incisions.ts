import { summariseAstigmatism, type AstigmatismGroup } from '../statistics/astigmatism-groups.ts';
import { mean } from '../statistics/summaries.ts';
import { CORNEA_WINDOW, type Case, type InducedAstigmatism } from './cases.ts';
import { figure, type Figure, type FigureText, type Group } from './figure.ts';
import { groupBy } from './group-by.ts';

const INDUCED = `change of the keratometry from before the operation to the last visit ${CORNEA_WINDOW.fromDays} to ${CORNEA_WINDOW.toDays} days after it, in the double-angle plane, meridians counted from the incision`;
const HOLLADAY = 'Holladay et al., J Cataract Refract Surg 2001;27:61-79 (from memory)';
const UNCORRECTED =
  'Contains the noise of two measurements; a change without any operation would not be zero in a single eye.';

const text = (name: string, label: string, unit: string, method: string, source: string): FigureText => ({
  name,
  label,
  unit,
  method: `${method} of the ${INDUCED}`,
  source,
  cautions: [UNCORRECTED],
});

const CENTROID = text('induced-centroid', 'Induced astigmatism, centroid', 'D', 'length of the mean vector', HOLLADAY);
const CENTROID_AXIS = text(
  'induced-centroid-axis',
  'Centroid: steeper meridian, counted from the incision',
  '°',
  'direction (90 = across the incision, that is flattening along it) of the mean vector',
  HOLLADAY,
);
const MEAN_MAGNITUDE = text(
  'induced-mean-magnitude',
  'Induced astigmatism, mean magnitude',
  'D',
  'mean length, blind to direction, never smaller than the centroid,',
  HOLLADAY,
);
const SD_TOTAL = text(
  'induced-sd',
  'Induced astigmatism, standard deviation',
  'D',
  'square root of the summed variances of both axes of the plane',
  'a convention: sqrt(SDx² + SDy²)',
);
const SD_X = text(
  'induced-sd-x',
  'Standard deviation along the incision',
  'D',
  'standard deviation (n - 1) of the x coordinate',
  HOLLADAY,
);
const SD_Y = text(
  'induced-sd-y',
  'Standard deviation at 45° to the incision',
  'D',
  'standard deviation (n - 1) of the y coordinate',
  HOLLADAY,
);
const FLATTENING = text(
  'flattening-mean',
  'Flattening at the incision, mean',
  'D',
  'mean flattening component (positive = flatter)',
  'Alpins, J Cataract Refract Surg 2001;27:31-49 (terms)',
);
const TORQUE = text(
  'torque-mean',
  'Torque at the incision, mean',
  'D',
  'mean torque component (counter-clockwise positive)',
  'Alpins, J Cataract Refract Surg 2001;27:31-49 (terms)',
);
const P_VALUE = text(
  'induced-p',
  "Chance of such a centroid without any effect (Hotelling's T²)",
  '',
  "p of Hotelling's one-sample T²",
  'Hotelling, Ann Math Stat 1931;2:360-78 (from memory)',
);

/** Cases of one surgeon, site and width together. */
export interface IncisionGroup {
  readonly group: Group;
  readonly cases: readonly Case[];
  readonly induced: readonly InducedAstigmatism[];
  readonly summary: AstigmatismGroup | null;
}

export const WIDTH_UNKNOWN = 'width not recorded';

export function widthText(widthMm: number | null): string {
  return widthMm === null ? WIDTH_UNKNOWN : `${widthMm.toFixed(1)} mm`;
}

function groupOf(group: Group, cases: readonly Case[]): IncisionGroup {
  const induced = cases.map((one) => one.induced).filter((one) => one !== null);
  return { group, cases, induced, summary: summariseAstigmatism(induced.map((one) => one.fromIncision)) };
}

function siteAndWidth({ operation: { incision } }: Case): string {
  return JSON.stringify([incision?.site ?? '', widthText(incision?.widthMm ?? null)]);
}

/** Operations with a recorded main incision, by site and width, and by surgeon within these. */
export function incisionGroups(cases: readonly Case[], surgeonOf: (one: Case) => string): readonly IncisionGroup[] {
  const placed = cases.filter((one) => one.operation.incision !== null);
  return groupBy(placed, siteAndWidth).flatMap(([, members]) => {
    const incision = members[0]?.operation.incision ?? null;
    if (incision === null) return [];
    const group = { site: incision.site, width: widthText(incision.widthMm) };
    return [
      groupOf(group, members),
      ...groupBy(members, surgeonOf).map(([surgeon, own]) => groupOf({ surgeon, ...group }, own)),
    ];
  });
}

/** Figures of one group of incisions. */
export function incisionFigures({ group, cases, induced: eyes, summary }: IncisionGroup): readonly Figure[] {
  const n = eyes.length;
  const missing = cases.length - n;
  if (summary === null) return [figure(CENTROID, group, { value: null, n, missing })];
  const of = (what: FigureText, value: number | null): Figure => figure(what, group, { value, n, missing });
  return [
    of(CENTROID, summary.centroid.magnitude),
    of(CENTROID_AXIS, summary.centroid.axis),
    of(MEAN_MAGNITUDE, summary.meanMagnitude),
    of(SD_TOTAL, summary.sdTotal),
    of(SD_X, summary.sdX),
    of(SD_Y, summary.sdY),
    of(FLATTENING, mean(eyes.map((eye) => eye.flatteningD))),
    of(TORQUE, mean(eyes.map((eye) => eye.torqueD))),
    of(P_VALUE, summary.hotelling?.p ?? null),
  ];
}
