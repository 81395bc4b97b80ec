import { id, quantity, value, word } from '../fields/field.ts';
import { quantityIn } from '../notation/quantity.ts';
import { lensKinds } from '../vocabulary/outcome.ts';

/** A meridian or axis in degrees, 0 to 180. */
export function meridian(label: string, meaning: string) {
  return value(quantityIn('°', { example: '95°' }), {
    label,
    meaning,
    example: '95°',
    possible: [0, 180],
    limitsSource: 'ISO 8429:1986',
    source: 'ISO 8429:1986 (dial), mark axis = steep meridian to be flattened',
    spoken: ['axis'],
  });
}

/** What names a lens: the same fields in the plan, the check and the implant. */
export const lensIdentity = {
  maker: id({
    label: 'Maker',
    meaning: 'The maker as on the box.',
    example: 'Halden Optics',
    source: 'RCS Good Surgical Practice 2014, 1.3 (identification of any prosthesis used)',
  }),
  model: id({
    label: 'Model',
    meaning: 'The model as on the box.',
    example: 'HX-1',
    source: 'IOL quality standard (RCOphth and UKOA 2018)',
    spoken: ['model'],
  }),
  kind: word(lensKinds, {
    label: 'Kind',
    meaning: 'Monofocal, toric, …',
    example: 'monofocal',
    spoken: ['kind of lens'],
  }),
  power: quantity('D', {
    label: 'Power',
    meaning: 'Spherical power on the box; minus, zero and plus powers alike.',
    example: '+5.5 D',
    possible: [-25, 50],
    usual: [-10, 34],
    limitsSource: 'common practice, no source',
    source: 'IOL quality standard (RCOphth and UKOA 2018); DICOM (0022,1053)',
    spoken: ['power'],
  }),
  cylinder: quantity('D', {
    label: 'Cylinder',
    meaning: 'Cylinder power on the box, in the plane of the lens.',
    example: '+2.25 D',
    possible: [0, 15],
    usual: [0.75, 9],
    limitsSource: 'common practice, no source',
    spoken: ['cylinder'],
  }),
};
