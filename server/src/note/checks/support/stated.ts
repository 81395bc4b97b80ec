import { operationCheck, type Check, type CheckInfo } from '../check.ts';
import type { Operation } from '@sideport/schemas';
import type { Wording } from './joined-text.ts';
import { mention, proseOf } from './prose.ts';
import type { Related } from '../../remark.ts';

/** A number derived from recorded fields, with the fields. */
export interface Derived {
  readonly value: number;
  readonly shown: string;
  readonly related: readonly Related[];
}

interface StatedCheck extends Pick<CheckInfo, 'id' | 'summary'> {
  /** How the number is called: “the mean keratometry”. */
  readonly what: string;
  readonly topic: string;
  /** Finds the number in free words: the first group. */
  readonly wording: Wording;
  readonly within: number;
  readonly derive: (note: Operation) => Derived | undefined;
}

/** A number written in free words must be the one that the recorded fields give. */
export function statedCheck({ what, topic, wording, within, derive, ...info }: StatedCheck): Check {
  return operationCheck({
    ...info,
    group: 'arithmetic',
    severity: 'warning',
    allowable: true,
    run: (note, say, { reading }) => {
      const found = mention(proseOf(reading), wording);
      if (found?.match[1] === undefined) return;
      const derived = derive(note);
      const stated = Number(found.match[1].replace(/\s/gu, '').replace(/[\u2212\u2013]/u, '-'));
      if (derived === undefined || Number.isNaN(stated) || Math.abs(stated - derived.value) <= within) return;
      say({
        at: found.place,
        message: `${topic}: the text says ${what} is “${found.match[1]}”, but the fields give ${derived.shown}.`,
        related: derived.related,
      });
    },
  });
}
