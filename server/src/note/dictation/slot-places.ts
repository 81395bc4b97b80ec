import { siteWords } from '@sideport/schemas/notation/site.ts';
import { sure, type Held } from './held.ts';
import { wordAt, type Token } from './tokens.ts';

const shortSites: Readonly<Record<string, string>> = {
  temp: 'temporal',
  sup: 'superior',
  nas: 'nasal',
  inf: 'inferior',
  supratemporal: 'superotemporal',
  superiotemporal: 'superotemporal',
  superiorotemporal: 'superotemporal',
  superionasal: 'superonasal',
  inferiortemporal: 'inferotemporal',
  inferotemp: 'inferotemporal',
  superotemp: 'superotemporal',
};

const sites: ReadonlySet<string> = new Set(siteWords);
const sitePrefixes: Readonly<Record<string, 'supero' | 'infero'>> = {
  supero: 'supero',
  superior: 'supero',
  super: 'supero',
  upper: 'supero',
  infero: 'infero',
  inferior: 'infero',
  lower: 'infero',
};

/** A sector of the eye: "temporal", "superotemporally", "supero nasal". */
export function readPlace(tokens: readonly Token[], at: number): readonly Held[] {
  const first = wordAt(tokens, at) ?? '';
  const whole = site(first);
  const out = whole === undefined ? [] : [sure(whole, at + 1)];
  const second = site(wordAt(tokens, at + 1) ?? '');
  const prefix = sitePrefixes[first];
  if (prefix !== undefined && (second === 'temporal' || second === 'nasal'))
    out.unshift(sure(`${prefix}${second}`, at + 2));
  return out;
}

function site(text: string): string | undefined {
  const plainForm = text.replace(/ly$/u, '');
  if (sites.has(plainForm)) return plainForm;
  return shortSites[plainForm];
}

/** Words that a sector can begin with. */
export const placeWords: readonly string[] = [
  ...Object.keys(shortSites),
  ...siteWords.flatMap((site) => [site, `${site}ly`]),
  ...Object.keys(sitePrefixes),
];
