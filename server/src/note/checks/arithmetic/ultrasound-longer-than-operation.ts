import { operationCheck, type About } from '../check.ts';
import { minuteOf } from '../support/clock.ts';
import { related } from '../support/place.ts';
import { rounded } from '../support/words.ts';

export const ultrasoundLongerThanOperation = operationCheck({
  id: 'ultrasound-longer-than-operation',
  group: 'arithmetic',
  summary: 'The ultrasound is said to have run longer than the operation took.',
  severity: 'error',
  allowable: false,
  run: ({ nucleus, start, finish }, say) => {
    const time = nucleus?.['ultrasound-time'] ?? nucleus?.['torsional-time'];
    if (time === undefined || start === undefined || finish === undefined) return;
    const seconds = (minuteOf(finish.value) - minuteOf(start.value)) * 60;
    if (seconds <= 0 || time.value.amount <= seconds) return;
    say({
      at: time,
      message: `Ultrasound: ${time.text} is longer than the operation of ${rounded(seconds / 60, 0)} minutes.`,
      related: [related(`the finish: ${finish.text}`, finish), related(`the start: ${start.text}`, start)],
    });
  },
});

export const aboutUltrasoundLongerThanOperation: About = () => ({
  why: 'A unit or a digit is wrong: minutes read as seconds, or a decimal point lost.',
  whatToDo: 'Compare with the display of the machine and the theatre log.',
  source: 'arithmetic',
  since: '1.0',
  faulty: { note: 'finish: 10:12\nnucleus:\n  ultrasound-time: 9 min' },
  sound: { note: 'nucleus:\n  ultrasound-time: 52 s' },
});
