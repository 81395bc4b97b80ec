import { checkGroups } from '../../note/checks/check.ts';
import { checkById, knownChecks } from '../../note/checks/known-checks.ts';
import { nearest } from '@sideport/schemas/notation/near-miss.ts';
import { defineCommand } from '../command.ts';
import { WrongUse } from '../world.ts';

export const explain = defineCommand({
  operands: '[CHECK]',
  about: 'Says what a check looks for, why, and what to do. Without a name: lists all checks.',
  options: {},
  run: async ({ paths }, world) => {
    const [id] = paths;
    if (paths.length > 1) throw new WrongUse('Name one check: sideport explain CHECK.');
    if (id === undefined) {
      const groups = checkGroups.map((group) => {
        const lines = knownChecks
          .filter((check) => check.group === group)
          .map((check) => `  ${check.id}: ${check.summary}`);
        return lines.length === 0 ? '' : `${group}\n${lines.join('\n')}\n`;
      });
      world.stdout.write(groups.filter((group) => group !== '').join('\n'));
      return 0;
    }
    const known = checkById(id);
    if (known === undefined) {
      const near = nearest(
        id,
        knownChecks.map((check) => check.id),
      );
      throw new WrongUse(`There is no check ${id}.${near === undefined ? '' : ` Did you mean ${near}?`}`);
    }
    world.stdout.write(
      `${known.id}\n\n${known.summary}\n\nWhy: ${known.why}\nWhat to do: ${known.whatToDo}\nSource: ${known.source}\n`,
    );
    return 0;
  },
});
