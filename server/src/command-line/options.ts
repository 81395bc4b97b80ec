import { parseArgs } from 'node:util';
import { nearest } from '@sideport/schemas/notation/near-miss.ts';
import { WrongUse } from './world.ts';

/** One option of a command. */
export type Option =
  | { readonly kind: 'flag'; readonly about: string }
  | { readonly kind: 'text'; readonly value: string; readonly about: string }
  | {
      readonly kind: 'choice';
      readonly value: string;
      readonly choices: readonly string[];
      readonly fallback: string;
      readonly about: string;
    };

export type Options = Readonly<Record<string, Option>>;

/** What was given for each option: a choice always has a value, a text may be missing. */
export type Values<O extends Options> = {
  readonly [K in keyof O]: O[K] extends { readonly kind: 'flag' }
    ? boolean
    : O[K] extends { readonly kind: 'choice'; readonly choices: readonly (infer C)[] }
      ? C
      : string | undefined;
};

export interface Given<O extends Options> {
  readonly values: Values<O>;
  readonly paths: readonly string[];
  readonly help: boolean;
}

/** Reads the words behind a command. Throws WrongUse for an option that is not known or has no sensible value. */
export function readOptions<O extends Options>(options: O, words: readonly string[]): Given<O> {
  const known: Options = { ...options, help: { kind: 'flag', about: '' } };
  const { tokens } = parseArgs({
    args: [...words],
    options: Object.fromEntries(
      Object.entries(known).map(([name, { kind }]) => [name, { type: kind === 'flag' ? 'boolean' : 'string' }]),
    ),
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const values: Record<string, string | boolean | undefined> = {};
  for (const [name, option] of Object.entries(options))
    values[name] = option.kind === 'flag' ? false : option.kind === 'choice' ? option.fallback : undefined;
  const paths: string[] = [];
  let help = false;
  for (const token of tokens) {
    if (token.kind === 'positional') paths.push(token.value);
    else if (token.kind === 'option' && (token.name === 'help' || token.rawName === '-h')) help = true;
    else if (token.kind === 'option') values[token.name] = valueOf(known, token.name, token.rawName, token.value);
  }
  return { values: values as Values<O>, paths, help };
}

function valueOf(known: Options, name: string, typed: string, value: string | undefined): string | boolean {
  const option = Object.hasOwn(known, name) ? known[name] : undefined;
  if (option === undefined) {
    const near = nearest(name, Object.keys(known));
    throw new WrongUse(`There is no option ${typed}.${near === undefined ? '' : ` Did you mean --${near}?`}`);
  }
  if (option.kind === 'flag') {
    if (value !== undefined) throw new WrongUse(`--${name} takes no value.`);
    return true;
  }
  if (value === undefined || value === '') throw new WrongUse(`--${name} needs a value: --${name} ${option.value}.`);
  if (option.kind === 'choice' && !option.choices.includes(value)) {
    const near = nearest(value, option.choices);
    throw new WrongUse(
      `--${name} cannot be ${value}.${near === undefined ? '' : ` Did you mean ${near}?`} It can be ${listed(option.choices)}.`,
    );
  }
  return value;
}

function listed(choices: readonly string[]): string {
  return choices.length < 2 ? choices.join('') : `${choices.slice(0, -1).join(', ')} or ${choices.at(-1)}`;
}
