import { id, quantity, section, text, value, word } from '../fields/field.ts';
import { haptics } from '../notation/haptics.ts';
import { offset } from '../notation/offset.ts';
import { pieces, yesNo } from '../notation/plain.ts';
import { expiryDate } from '../notation/time.ts';
import { lensMaterials, placements } from '../vocabulary/outcome.ts';
import { lensIdentity, meridian } from './lens-fields.ts';

const practice = 'common practice, no source';
const udiSource = 'FDA, UDI formats by FDA-accredited issuing agency, 2017; RCS Good Surgical Practice 2014, 1.3';

export const lens = section(
  {
    label: 'Lens',
    meaning: 'The lens implanted and its position, or placed: none.',
    source: 'RCS Good Surgical Practice 2014, 1.3; 42 CFR 482.51(b)(6)',
    spoken: ['lens', 'implant'],
  },
  {
    ...lensIdentity,
    axis: meridian('Axis', 'Axis at which the toric marks lie at the end.'),
    pieces: value(pieces, { label: 'Pieces', meaning: 'One-piece or three-piece.', example: '1', spoken: ['piece'] }),
    material: word(lensMaterials, {
      label: 'Material',
      meaning: 'Material of the optic.',
      example: 'hydrophobic acrylic',
      source: 'Lundström et al. 2021',
    }),
    'optic-diameter': quantity('mm', {
      label: 'Optic diameter',
      meaning: 'Diameter of the optic.',
      example: '6.0 mm',
      possible: [4, 8],
      usual: [5, 7],
      limitsSource: practice,
    }),
    serial: id({
      label: 'Serial number',
      meaning: 'Serial number on the box.',
      example: '0040719052',
      source: udiSource,
      spoken: ['serial number', 'serial'],
    }),
    lot: id({
      label: 'Lot',
      meaning: 'Lot number on the box.',
      example: 'L2031A',
      source: udiSource,
      spoken: ['lot', 'batch'],
    }),
    expiry: value(expiryDate, {
      label: 'Expiry',
      meaning: 'Expiry date on the box.',
      example: '2034-06',
      source: udiSource,
      spoken: ['expiry'],
    }),
    udi: id({
      label: 'Scanned identifier',
      meaning: 'The barcode of the box as scanned, or as printed in brackets.',
      example: '(01)09521234543213(17)340600(21)0040719052',
      source: udiSource,
    }),
    placed: word(placements, {
      label: 'Placed',
      meaning: 'Where the lens lies; “none” when the eye was left without a lens.',
      example: 'capsular bag',
      source: 'Cataract National Data Set (UK)',
    }),
    'haptics-at': value(haptics, { label: 'Haptics', meaning: 'Where the haptics lie.', example: '90°' }),
    'off-centre': value(offset, {
      label: 'Off-centre',
      meaning: 'How far the optic lies from the centre of the pupil, and toward which place.',
      example: 'centred',
    }),
    'ovd-removed-behind': value(yesNo, {
      label: 'Viscoelastic removed behind the lens',
      meaning: 'Whether the viscoelastic behind the optic was removed.',
      example: 'yes',
    }),
    'injected-through': quantity('mm', {
      label: 'Injected through',
      meaning: 'Width of the wound at injection.',
      example: '2.2 mm',
      possible: [0.5, 14],
    }),
    'card-given': value(yesNo, {
      label: 'Implant card given',
      meaning: 'Whether the patient received the implant card.',
      example: 'yes',
      source: 'Regulation (EU) 2017/745, Art. 18 (from memory)',
    }),
    'changed-because': text({
      label: 'Changed because',
      meaning: 'Why another lens than planned was implanted.',
      example: 'capsule tear: three-piece lens in the sulcus',
    }),
    text: text({ label: 'Lens in words', meaning: 'What the fields cannot say.' }),
  },
);

export const explantedLens = section(
  {
    label: 'Lens taken out',
    meaning: 'The lens that was removed from the eye in an exchange, or explanted.',
    source: 'RCS Good Surgical Practice 2014, 1.3 (tissue or prosthesis removed, added or altered)',
  },
  {
    ...lensIdentity,
    serial: id({ label: 'Serial number', meaning: 'Its serial number, when it is known.', example: '0040711407' }),
    reason: text({ label: 'Reason', meaning: 'Why it was taken out.', example: 'refractive surprise of +3 D' }),
    text: text({ label: 'Account', meaning: 'How it was taken out.', example: 'cut in two, through 2.8 mm' }),
  },
);
