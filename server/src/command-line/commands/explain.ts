import { explainAll, explainCheck, nearestCheck } from '../../note/checks/explain.ts';
import { defineCommand } from '../command.ts';
import { WrongUse } from '../world.ts';

export const explain = defineCommand({
  operands: '[CHECK]',
  about:
    'Says what a check looks for, why, what to do, and from which source, with an example. Without a name: all checks.',
  options: {},
  run: async ({ paths }, world) => {
    const [id] = paths;
    if (paths.length > 1) throw new WrongUse('Name one check: sideport explain CHECK.');
    const text = id === undefined ? explainAll().text : explainCheck(id)?.text;
    if (text === undefined) {
      const near = nearestCheck(id ?? '');
      throw new WrongUse(`There is no check ${id}.${near === undefined ? '' : ` Did you mean ${near}?`}`);
    }
    world.stdout.write(text);
    return 0;
  },
});
