import { arccos } from '../angles.ts';
import { calculation } from '../calculation.ts';
import { quantity } from '../fields.ts';
import { found, refused } from '../outcome.ts';

interface Circles {
  readonly capsulotomyMm: number;
  readonly opticMm: number;
  /** Distance between the two centres, mm. */
  readonly offsetMm: number;
}

const CAPSULOTOMY = quantity('capsulotomy diameter', 'mm', 1, 10);
const OPTIC = quantity('optic diameter', 'mm', 4, 8);
const inputs = {
  capsulotomyMm: CAPSULOTOMY,
  opticMm: OPTIC,
  offsetMm: quantity('distance between capsulotomy and optic centre', 'mm', 0, 5),
};
const topic = 'Capsulotomy';
const source = { citation: 'geometry of two circles', status: 'derived' } as const;
const domain = 'A round capsulotomy; an oval one is covered less than this says along its long axis.';
const example: Circles = { capsulotomyMm: 5.25, opticMm: 6, offsetMm: 0.3 };

const least = ({ capsulotomyMm, opticMm, offsetMm }: Circles): number => (opticMm - capsulotomyMm) / 2 - offsetMm;
/** Rounding noise must not turn an edge that just meets the optic into an uncovered one. */
const coversAllRound = (circles: Circles): boolean => least(circles) >= -1e-9;

function sizeCautions({ capsulotomyMm, opticMm }: Circles): string[] {
  return capsulotomyMm >= opticMm
    ? ['The capsulotomy is not smaller than the optic: no overlap can be relied on.']
    : [];
}

export const leastOverlap = calculation<Circles, number>({
  name: 'capsulotomy-overlap-least',
  topic,
  definition: 'Width of capsule over the optic where it is narrowest; negative is capsule edge beyond the optic.',
  inputs,
  unit: 'mm',
  domain,
  method: 'optic radius - capsulotomy radius - offset',
  source,
  example: { input: example, gives: 0.075 },
  compute: (circles) =>
    found(least(circles), [
      ...sizeCautions(circles),
      ...(coversAllRound(circles) ? [] : ['The capsule does not cover the edge of the optic all round.']),
    ]),
});

export const mostOverlap = calculation<Circles, number>({
  name: 'capsulotomy-overlap-most',
  topic,
  definition: 'Width of capsule over the optic where it is widest.',
  inputs,
  unit: 'mm',
  domain,
  method: 'optic radius - capsulotomy radius + offset',
  source,
  example: { input: example, gives: 0.675 },
  compute: (circles) => found((circles.opticMm - circles.capsulotomyMm) / 2 + circles.offsetMm, sizeCautions(circles)),
});

export const meanOverlap = calculation<Omit<Circles, 'offsetMm'>, number>({
  name: 'capsulotomy-overlap-centred',
  topic,
  definition: 'Width of capsule over the optic if the two were centred on each other.',
  inputs: { capsulotomyMm: CAPSULOTOMY, opticMm: OPTIC },
  unit: 'mm',
  domain,
  method: 'optic radius - capsulotomy radius',
  source,
  example: { input: { capsulotomyMm: 5.25, opticMm: 6 }, gives: 0.375 },
  compute: ({ capsulotomyMm, opticMm }) => found((opticMm - capsulotomyMm) / 2),
});

export const coveredShare = calculation<Circles, number>({
  name: 'capsulotomy-covered-share',
  topic,
  definition: 'Share of the capsulotomy edge that lies on the optic; 1 is covered all round.',
  inputs,
  unit: '',
  domain,
  method: '1 if the offset leaves the edge inside the optic, else 1 - arccos((R² - e² - c²) / 2ec) / 180°',
  source,
  example: { input: { capsulotomyMm: 5.5, opticMm: 6, offsetMm: 0.4 }, gives: 0.697214 },
  compute: (circles) => {
    if (coversAllRound(circles)) return found(1);
    const c = circles.capsulotomyMm / 2;
    const r = circles.opticMm / 2;
    const e = circles.offsetMm;
    if (e === 0) return found(0, sizeCautions(circles));
    return found(1 - arccos((r * r - e * e - c * c) / (2 * e * c)) / 180, sizeCautions(circles));
  },
});

export const largestOffset = calculation<Omit<Circles, 'offsetMm'>, number>({
  name: 'capsulotomy-largest-offset',
  topic,
  definition: 'How far the two centres may lie apart with the capsule still covering the optic edge all round.',
  inputs: { capsulotomyMm: CAPSULOTOMY, opticMm: OPTIC },
  unit: 'mm',
  domain,
  method: 'optic radius - capsulotomy radius',
  source,
  example: { input: { capsulotomyMm: 5.25, opticMm: 6 }, gives: 0.375 },
  compute: ({ capsulotomyMm, opticMm }) =>
    capsulotomyMm > opticMm
      ? refused('the capsulotomy is larger than the optic: it is never covered all round')
      : found((opticMm - capsulotomyMm) / 2),
});
