import { readLabel } from '../../label/label.ts';
import { departmentCheck, type About } from '../check.ts';
import { small } from '../support/words.ts';

export const deviceIdentifierNotValid = departmentCheck({
  id: 'device-identifier-not-valid',
  group: 'department file',
  summary: 'A device identifier in the list of lenses does not pass its check digit.',
  severity: 'error',
  allowable: false,
  run: ({ lenses }, say) => {
    for (const { 'device-identifier': identifier } of lenses?.items ?? []) {
      if (identifier === undefined || !/^\d+$/u.test(identifier.value)) continue;
      const fault = readLabel(`(01)${identifier.value}`, 2030).faults.find(({ severity }) => severity === 'error');
      if (fault !== undefined) say({ at: identifier, message: `Device identifier: ${small(fault.message)}` });
    }
  },
});

export const aboutDeviceIdentifierNotValid: About = () => ({
  why: 'No scanned lens would ever match it.',
  whatToDo: 'Copy it from the line marked (01) on the box, or scan it.',
  source: 'GS1 General Specifications (check digit)',
  since: '1.0',
  faulty: {
    base: 'department',
    note: 'lenses:\n  - maker: Halden Optics\n    model: HX-1\n    kind: monofocal\n    optic-diameter: 6.0 mm\n    device-identifier: "09521234543218"',
  },
  sound: {
    base: 'department',
    note: 'lenses:\n  - maker: Halden Optics\n    model: HX-1\n    kind: monofocal\n    optic-diameter: 6.0 mm\n    device-identifier: "09521234543213"',
  },
});
