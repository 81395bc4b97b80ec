import { dissipatedEnergy, effectivePhacoTime } from '../../calculations/machine/energy.ts';
import { infusionPressure, setInfusionPressure } from '../../calculations/machine/pressure.ts';
import type { Definition } from '../definition.ts';
import { amountOf, withCautions, type Known } from '../known.ts';
import type { OperationFacts } from '../operation-facts.ts';
import { result, spotOf, type Result } from '../result.ts';

/** Infusion pressure of every step of the nucleus, and of cortex removal. */
export const infusionPressures: Definition<OperationFacts> = {
  names: ['infusion-pressure'],
  compute: ({ note }) =>
    [...(note.nucleus?.steps?.items ?? []), ...(note.cortex === undefined ? [] : [note.cortex])].flatMap(
      (step): readonly Result[] => {
        const { 'bottle-height': height, 'set-pressure': pressure } = step;
        if (pressure !== undefined) {
          const inputs = { 'set-pressure': amountOf(pressure, 'the set pressure') };
          return [
            result(
              'infusion-pressure',
              spotOf(pressure),
              inputs,
              (given) => setInfusionPressure({ pressureMmHg: given['set-pressure'] }),
              { inline: false },
            ),
          ];
        }
        if (height === undefined) return [];
        const inputs = { 'bottle-height': amountOf(height, 'the bottle height') };
        return [
          result('infusion-pressure', spotOf(height), inputs, (given) =>
            infusionPressure({ bottleHeightCm: given['bottle-height'] }),
          ),
        ];
      },
    ),
};

/** Ultrasound reckoned at full power; the weighted sum where torsional ultrasound is recorded. */
export const ultrasound: Definition<OperationFacts> = {
  names: ['effective-phaco-time', 'dissipated-energy'],
  compute: ({ note }) => {
    const nucleus = note.nucleus;
    const time = nucleus?.['ultrasound-time'];
    const torsional = nucleus?.['torsional-time'];
    const seconds = amountOf(time, 'the ultrasound time');
    const power = amountOf(nucleus?.['mean-power'], 'the mean ultrasound power');
    const results: Result[] = [];
    if (time !== undefined)
      results.push(
        result('effective-phaco-time', spotOf(time), { 'ultrasound-time': seconds, 'mean-power': power }, (given) =>
          effectivePhacoTime({ ultrasoundSeconds: given['ultrasound-time'], meanPowerPercent: given['mean-power'] }),
        ),
      );
    if (torsional !== undefined) {
      const none: Known<number> = { ok: true, value: 0, unit: '' };
      const noLongitudinal = time === undefined && nucleus?.['mean-power'] === undefined;
      results.push(
        result(
          'dissipated-energy',
          spotOf(torsional),
          {
            'ultrasound-time': noLongitudinal ? none : seconds,
            'mean-power': noLongitudinal ? none : power,
            'torsional-time': amountOf(torsional, 'the torsional time'),
            'torsional-power': amountOf(nucleus?.['torsional-power'], 'the torsional amplitude'),
          },
          (given) =>
            withCautions(
              dissipatedEnergy({
                longitudinalSeconds: given['ultrasound-time'],
                longitudinalPercent: given['mean-power'],
                torsionalSeconds: given['torsional-time'],
                torsionalPercent: given['torsional-power'],
              }),
              noLongitudinal
                ? ['No longitudinal ultrasound is recorded; it is counted as none.']
                : ['The ultrasound time is taken as the longitudinal part.'],
            ),
        ),
      );
    }
    return results;
  },
};
