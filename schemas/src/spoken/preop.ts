import type { SpokenAmount, SpokenField, SpokenSection } from './phrase.ts';

function length(possible: readonly [number, number], unit = 'mm'): readonly SpokenAmount[] {
  return [{ unit, bare: 'named', namedOnly: true, possible }];
}

function keratometry(key: string, named: string, short: string): SpokenField {
  return {
    path: `preop.biometry.${key}`,
    about: [key],
    called: [`${named} keratometry`, `${named} (k|keratometry|meridian) [(of|is|was)]`, `${short} [(of|is|was)]`],
    amounts: [
      { unit: 'D', bare: 'named', namedOnly: true, possible: [30, 60] },
      { unit: '°', bare: 'after at', possible: [0, 180], whole: true },
    ],
  };
}

/** Measurements before the operation. */
export function preopSpoken(): SpokenSection {
  return {
    subjects: [
      { id: 'biometry', named: ['biometry', 'keratometry'] },
      { id: 'k1', within: 'biometry' },
      { id: 'k2', within: 'biometry' },
    ],
    fields: [
      keratometry('k1', 'flat', '(k one|k 1)'),
      keratometry('k2', 'steep', '(k two|k 2)'),
      {
        path: 'preop.biometry.axial-length',
        about: ['biometry'],
        called: ['[the] (axial length|axial|a l|al|length of the eye|axial eye length) [(of|is|was)]'],
        amounts: length([14, 40]),
      },
      {
        path: 'preop.biometry.chamber-depth',
        about: ['biometry'],
        called: ['[anterior] chamber depth [(of|is|was)]', '(acd|a c d)'],
        amounts: length([1, 6.5]),
      },
      {
        path: 'preop.biometry.lens-thickness',
        about: ['biometry'],
        called: ['lens thickness [(of|is|was)]'],
        amounts: length([2, 8]),
      },
      {
        path: 'preop.biometry.white-to-white',
        about: ['biometry'],
        called: ['white to white [(of|is|was|distance)]', '(w t w|wtw)'],
        amounts: length([8, 15]),
      },
      {
        path: 'preop.biometry.corneal-thickness',
        about: ['biometry'],
        called: ['[central] corneal thickness [(of|is|was)]', 'pachymetry', '(cct|c c t)'],
        amounts: length([300, 1000], 'µm'),
      },
      {
        path: 'preop.pressure',
        about: ['biometry'],
        called: [
          '(pre+operative|pre+op|baseline) (pressure|intraocular pressure|iop|i o p) [(of|is|was)]',
          'pressure before [the] (operation|surgery)',
        ],
        amounts: [{ unit: 'mmHg', bare: 'named', namedOnly: true, possible: [0, 90] }],
      },
      {
        path: 'preop.endothelial-count',
        about: ['biometry'],
        called: ['endothelial [cell] (count|density) [(of|is|was)]'],
        amounts: [{ unit: '/mm²', bare: 'named', namedOnly: true, possible: [100, 5000], whole: true }],
      },
    ],
  };
}
