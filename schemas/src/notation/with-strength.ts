import { good } from './notation.ts';
import type { Vocabulary } from './words.ts';

const shape = /^(?<agent>.+?),? ?(?<strength>\d+(?:\.\d+)?) ?%$/u;

/** A vocabulary of agents that also understands one with its strength behind it, which stays in the text: trypan blue 0.06 %. */
export function withStrength<W extends string>(agents: Vocabulary<W>): Vocabulary<W> {
  const parts = (text: string) => shape.exec(text.trim())?.groups;
  return {
    ...agents,
    read: (text) => {
      const whole = agents.read(text);
      const agent = parts(text)?.['agent'];
      if (whole.ok || agent === undefined) return whole;
      const alone = agents.read(agent);
      return alone.ok ? good(alone.value) : whole;
    },
    write: (text) => {
      const said = parts(text);
      const agent = said?.['agent'] === undefined ? undefined : agents.read(said['agent']);
      return agent?.ok === true ? `${agent.value} ${said?.['strength']} %` : (agents.write?.(text) ?? text);
    },
  };
}
