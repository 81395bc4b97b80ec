import { element, plain, type Point } from '../../picture/svg.ts';
import type { Ellipse } from '../../statistics/astigmatism-groups.ts';
import type { DoubleAnglePlot } from '../audit.ts';
import { mark } from './frame.ts';

const SIZE = 300;
const CENTRE = SIZE / 2;
const REACH = 118;

const RAYS = [
  { meridian: 180, angle: 0 },
  { meridian: 45, angle: 90 },
  { meridian: 90, angle: 180 },
  { meridian: 135, angle: 270 },
] as const;

function ring(radiusD: number, scale: number): string {
  const circle = element('circle', { cx: CENTRE, cy: CENTRE, r: radiusD * scale, class: 'grid' });
  const aside = radiusD * scale * Math.SQRT1_2;
  const written = element('text', { x: CENTRE + aside + 1, y: CENTRE + aside + 9 }, plain(`${radiusD} D`));
  return circle + written;
}

function ellipse(centre: Point, { semiMajor, semiMinor, planeAngle }: Ellipse, scale: number, dash?: string): string {
  return element('ellipse', {
    cx: centre.x,
    cy: centre.y,
    rx: semiMajor * scale,
    ry: semiMinor * scale,
    // SVG turns clockwise, the plane counter-clockwise.
    transform: `rotate(${-planeAngle} ${centre.x} ${centre.y})`,
    class: 'line',
    'stroke-dasharray': dash,
  });
}

/**
 * Eyes in the double-angle plane, meridians counted from the incision: right = steeper along the incision,
 * left (90) = flatter along it. Ellipses of 95 %: centroid solid, single eyes dashed.
 */
export function doubleAnglePlot({ group, eyes, centroid, ellipses }: DoubleAnglePlot): string {
  const furthest = Math.max(0.5, ...eyes.map(({ x, y }) => Math.hypot(x, y)));
  const reachD = Math.ceil(furthest * 2) / 2;
  const scale = REACH / reachD;
  const place = ({ x, y }: Point): Point => ({ x: CENTRE + x * scale, y: CENTRE - y * scale });
  const name = Object.values(group).join(', ');
  const rings = Array.from({ length: Math.round(reachD * 2) }, (_, i) => (i + 1) / 2).filter(
    (radius) => reachD <= 2 || Number.isInteger(radius),
  );
  const middle = place(centroid);
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${SIZE} ${SIZE + 22}`,
      role: 'img',
      'aria-label': `Induced astigmatism in the double-angle plane: ${name}`,
      class: 'plot square',
    },
    element('title', {}, plain(`Induced astigmatism in the double-angle plane: ${name}`)),
    ...rings.map((radius) => ring(radius, scale)),
    ...RAYS.map(({ meridian, angle }) => {
      const direction = { x: Math.cos((angle * Math.PI) / 180), y: Math.sin((angle * Math.PI) / 180) };
      const end = place({ x: direction.x * reachD, y: direction.y * reachD });
      const beside = place({ x: direction.x * reachD * 1.13, y: direction.y * reachD * 1.13 });
      return (
        element('line', { x1: CENTRE, y1: CENTRE, x2: end.x, y2: end.y, class: 'grid' }) +
        element('text', { x: beside.x, y: beside.y + 4, 'text-anchor': 'middle' }, `${meridian}°`)
      );
    }),
    ...eyes.map((eye) => {
      const at = place(eye);
      return element('circle', { cx: at.x, cy: at.y, r: 1.6, class: 'eye' });
    }),
    ...(ellipses === null
      ? []
      : [ellipse(middle, ellipses.centroid, scale), ellipse(middle, ellipses.individuals, scale, '6 4')]),
    mark(middle, 1),
    element('text', { x: CENTRE, y: SIZE + 16, 'text-anchor': 'middle' }, plain(`${name} (n ${eyes.length})`)),
  );
}
