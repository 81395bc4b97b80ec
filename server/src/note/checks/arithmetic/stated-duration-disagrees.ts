import type { About } from '../check.ts';
import { minuteOf } from '../support/clock.ts';
import { related } from '../support/place.ts';
import { statedCheck } from '../support/stated.ts';

export const statedDurationDisagrees = statedCheck({
  id: 'stated-duration-disagrees',
  what: 'the duration in minutes',
  topic: 'Times',
  summary: 'The duration in the text is not that from start to finish.',
  wording: {
    hints: ['duration', 'operating time', 'took', 'lasted'],
    pattern:
      /\b(?:duration|operating time|operation (?:took|lasted)|surgery (?:took|lasted))(?: of| was| is|:)? (\d{1,3}) ?min/giu,
  },
  within: 2,
  derive: ({ start, finish }) => {
    if (start === undefined || finish === undefined) return undefined;
    const value = minuteOf(finish.value) - minuteOf(start.value);
    if (value <= 0) return undefined;
    return {
      value,
      shown: `${value} minutes`,
      related: [related(`start: ${start.text}`, start), related(`finish: ${finish.text}`, finish)],
    };
  },
});

export const aboutStatedDurationDisagrees: About = () => ({
  why: 'One of the times is mistyped, or the text is from another note.',
  whatToDo: 'Correct the number in the text, or the fields. A number that is computed need not be typed at all.',
  source: 'arithmetic',
  since: '1.0',
  faulty: { note: 'free-text: the operation took 45 minutes' },
  sound: { note: 'free-text: the operation took 21 minutes' },
});
