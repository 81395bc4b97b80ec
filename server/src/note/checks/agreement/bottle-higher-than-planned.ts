import { operationCheck, type About } from '../check.ts';
import { composeNote } from '../examples/compose.ts';
import { longEye } from '../examples/scenarios.ts';
import { has } from '../support/course.ts';
import { related } from '../support/place.ts';

const HIGH_BOTTLE = 90;
const HIGH_PRESSURE = 66;

export const bottleHigherThanPlanned = operationCheck({
  id: 'bottle-higher-than-planned',
  group: 'agreement',
  summary: 'A low bottle was planned, but a step ran with a high one.',
  severity: 'warning',
  allowable: true,
  run: ({ plan, nucleus, cortex }, say) => {
    const low = has(plan?.precautions, 'low bottle');
    if (low === undefined) return;
    const settings = [...(nucleus?.steps?.items ?? []), ...(cortex === undefined ? [] : [cortex])];
    for (const step of settings) {
      const height = step['bottle-height'];
      const pressure = step['set-pressure'];
      const high = [
        height !== undefined && height.value.amount > HIGH_BOTTLE ? height : undefined,
        pressure !== undefined && pressure.value.amount > HIGH_PRESSURE ? pressure : undefined,
      ].find((field) => field !== undefined);
      if (high === undefined) continue;
      say({
        at: high,
        message: `Infusion: ${high.text}, although a low bottle was planned for this eye.`,
        related: [related('the plan: low bottle', low)],
      });
      return;
    }
  },
});

export const aboutBottleHigherThanPlanned: About = () => ({
  why: 'In a long or vitrectomised eye a high bottle pushes the iris back and the chamber deep, with pain and strain on the zonule.',
  whatToDo: 'Compare with the settings of the machine. If the height was needed, say why and allow the remark.',
  source:
    'Suzuki et al., J Cataract Refract Surg 2009 (pressure by bottle height); limit of 90 cm common practice, no source',
  since: '1.0',
  faulty: { note: composeNote(longEye, 'cortex:\n  bottle-height: 110 cm') },
  sound: { note: composeNote(longEye, 'cortex:\n  bottle-height: 60 cm') },
});
