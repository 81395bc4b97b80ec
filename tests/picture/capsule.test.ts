import { describe, expect, it } from 'vitest';
import { drawEye } from '../../server/src/note/picture/eye-picture.ts';
import { sceneOf } from '../../server/src/note/picture/scene-of-note.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import { angleFrom, attributes, corners, groupAt, limbus } from './reading.ts';

function pictureOf(lines: string) {
  const reading = readNote(`opnote: 1\nrecord: operation\neye: right\n${lines}\n`);
  expect(reading.remarks.filter(({ severity }) => severity === 'error')).toEqual([]);
  if (reading.kind !== 'operation') throw new Error('Not an operation');
  const { description, missing, svg } = drawEye(sceneOf(reading.note));
  const words = [...description.matchAll(/\d+\. (.*?)\.(?= \d+\. | Not recorded|$)/gu)].map(([, part]) => part);
  return { words, missing, svg };
}

const capsulotomy = 'capsulotomy:\n  diameter: 5.0 mm\n  off-centre: centred';
const optic = 'lens:\n  optic-diameter: 6.0 mm\n  off-centre: centred\n  placed:';

describe('what the note says is not there', () => {
  it('is said, and is not called missing', () => {
    const { words, missing } = pictureOf('capsulotomy: not done\nlens:\n  placed: none\nring:\n  used: no');
    expect(words).toEqual([
      'No capsular tension ring used',
      'No capsulotomy made',
      'No lens implanted: the eye was left without one',
    ]);
    expect(missing.join()).not.toMatch(/capsulotomy|optic|ring/u);
  });

  it('is missing where the note does not say so', () => {
    expect(pictureOf('capsulotomy: not recorded').missing).toEqual(
      expect.arrayContaining(['capsulotomy', 'state of the zonule', 'lens optic']),
    );
    expect(pictureOf('capsule-state:\n  zonule: intact')).toMatchObject({
      words: [],
      missing: expect.not.arrayContaining(['state of the zonule']),
    });
  });

  it('is not drawn as an aim of a lens that stayed out', () => {
    expect(pictureOf('plan:\n  lens:\n    axis: 98\nlens:\n  placed: none').words.join()).not.toContain('aimed');
  });
});

describe('the cover of the optic', () => {
  it('is told of an unbroken rim in front of a lens in the bag', () => {
    const { words } = pictureOf(`${capsulotomy}\n  outcome: complete\n${optic} bag`);
    expect(words).toEqual([
      'Capsulotomy: 5.0 mm, centred; it covers the optic edge all round, by 0.5 mm',
      'Lens optic in the capsular bag: 6.0 mm, centred',
    ]);
  });

  it.each([
    ['\n  outcome: converted to can-opener', 'converted to can-opener'],
    ['\n  outcome: radial tear', 'torn radially'],
    ['\n  outcome: extended', 'run out to the periphery'],
    ['\n  outcome: incomplete', 'not complete'],
    ['\n  technique: can-opener\n  outcome: complete', 'can-opener'],
    ['\n  outcome: complete\ncapsule-state:\n  anterior: torn, contained', 'anterior capsule torn'],
    ['\n  outcome: complete\ncapsule-state:\n  anterior: cut on purpose', 'anterior capsule cut'],
  ])('is not told of a broken rim: %j', (lines, why) => {
    const { words, svg } = pictureOf(`${capsulotomy}${lines}\n${optic} bag`);
    expect(words[0]).toBe(
      `Capsulotomy: 5.0 mm, centred; no unbroken rim (${why}): the circle shows its size, not that it covers the optic`,
    );
    const whole = pictureOf(`${capsulotomy}\n${optic} bag`).svg;
    const dashes = (drawing: string) =>
      attributes(groupAt(drawing, 'capsulotomy'), 'circle')[0]?.get('stroke-dasharray');
    expect(dashes(svg)).not.toBe(dashes(whole));
  });

  it.each(['sulcus', 'optic capture', 'iris, behind', 'scleral fixation'])(
    'is not told of a lens that lies elsewhere: %s',
    (placed) => {
      const { words, svg } = pictureOf(
        `capsulotomy:\n  diameter: 7.0 mm\n  off-centre: centred\n${optic} ${JSON.stringify(placed)}`,
      );
      expect(words.join()).not.toContain('cover');
      expect(groupAt(svg, 'capsulotomy')).not.toContain('uncovered');
    },
  );
});

describe('a defect of the zonule', () => {
  const zonule = (lines: string) => pictureOf(`capsule-state:\n  zonule: ${lines}`);

  it.each([
    [
      'ruptured\n  zonule-extent: 3 clock hours\n  zonule-at: 315°',
      'Zonule ruptured: 3 clock hours, the middle at 315° (half past 4, inferonasal)',
    ],
    [
      'ruptured\n  zonule-extent: 1\n  zonule-at: nasal',
      "Zonule ruptured: 1 clock hour, the middle at 0° (3 o'clock, nasal)",
    ],
    ['ruptured\n  zonule-extent: 12', 'Zonule ruptured: 12 clock hours, all round'],
    ['ruptured\n  zonule-extent: 4', 'Zonule ruptured: 4 clock hours, place not recorded'],
    ['ruptured', 'Zonule ruptured: extent not recorded, place not recorded'],
    ['weak\n  zonule-at: temporal', "Zonule weak: 180° (9 o'clock, temporal)"],
  ])('is said in words: %j', (lines, words) => expect(zonule(lines).words).toEqual([words]));

  /** A clock hour is a twelfth of the circle: 30 degrees. The view without a seat is that of the dial itself. */
  it.each([
    [3, 315],
    [5, 45],
    [8, 180],
  ])('is drawn over %i clock hours about %i°', (hours, middle) => {
    const { svg } = zonule(`ruptured\n  zonule-extent: ${hours}\n  zonule-at: ${middle}°`);
    const centre = limbus(svg);
    const drawn = corners(groupAt(svg, 'capsule-state', 'zonule')).map((point) => {
      const away = angleFrom(centre, point) - middle;
      return ((((away + 180) % 360) + 360) % 360) - 180;
    });
    expect(Math.min(...drawn)).toBeCloseTo(-15 * hours, 0);
    expect(Math.max(...drawn)).toBeCloseTo(15 * hours, 0);
  });

  it('is not drawn where its place is not recorded', () => {
    const { svg } = zonule('ruptured\n  zonule-extent: 4');
    expect(groupAt(svg, 'capsule-state', 'zonule')).toContain('?</text>');
    expect(corners(groupAt(svg, 'capsule-state', 'zonule')).length).toBeLessThan(8);
  });
});

describe('what is put into the bag or the pupil', () => {
  it.each([
    ['ring:\n  used: yes\n  size: 12.3/10 mm', 'Capsular tension ring: 10.0 mm compressed'],
    [
      'ring:\n  used: yes\n  kind: tension ring with eyelet\n  size: 12.3/10 mm',
      'Capsular tension ring with eyelet: 10.0 mm compressed',
    ],
    [
      'ring:\n  used: yes\n  kind: segment\n  size: 12.3/10 mm',
      'Capsular tension segment: place not recorded, not drawn',
    ],
    [
      'ring:\n  used: yes\n  size: 12.3/10 mm\n  result: removed again',
      'Capsular tension ring: removed again, not drawn',
    ],
    ['ring:\n  used: yes\n  result: ring lost', 'Capsular tension ring: lost, not drawn'],
    ['pupil-aid:\n  - kind: iris hooks\n    count: 5', 'Iris hooks: 5 used, places not recorded, not drawn'],
    ['pupil-aid:\n  - kind: iris hooks', 'Iris hooks: number not recorded, places not recorded, not drawn'],
    ['pupil-aid:\n  - kind: expansion ring\n    count: 1', 'Pupil expansion ring used, not drawn'],
  ])('is said in words: %j', (lines, words) => {
    const picture = pictureOf(lines);
    expect(picture.words).toEqual([words]);
    expect(picture.missing.join()).not.toContain('size of the capsular tension ring');
    const [part = ''] = lines.split(':');
    const path = part === 'pupil-aid' ? ['pupil-aid', 0] : [part];
    expect(groupAt(picture.svg, ...path).includes('<path')).toBe(words.endsWith('compressed'));
  });

  it('shows hooks where incisions were made for them', () => {
    const { words, svg } = pictureOf(
      'incisions:\n  - kind: hook incision\n    at: 45°\n    width: 0.5 mm\n  - kind: other\n    at: 135°\n    width: 0.5 mm\npupil-aid:\n  - kind: hooks\n    count: 4',
    );
    expect(words).toEqual([
      'Hook incision: 0.5 mm wide, at 45° (half past 1, superonasal)',
      'Other incision: 0.5 mm wide, at 135° (half past 10, superotemporal)',
      'Iris hooks: 4 used, drawn at the one hook incision recorded',
    ]);
    const [outer, inner] = corners(groupAt(svg, 'incisions', 0));
    const centre = limbus(svg);
    for (const point of [outer, inner]) expect(angleFrom(centre, point ?? centre)).toBeCloseTo(45, 1);
    const drawn = (path: (string | number)[]) => attributes(groupAt(svg, ...path), 'path').length;
    expect(drawn(['incisions', 0])).toBe(drawn(['incisions', 1]) + 1);
  });
});
