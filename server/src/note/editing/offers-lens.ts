import { readLabel } from '../label/label.ts';
import { labelValue } from '../label/reading.ts';
import type { Department, Operation, Path } from '@sideport/schemas';
import { once, type Offer } from './offer.ts';

type ListedLens = NonNullable<Department['lenses']>['items'][number];
type NamedLens = NonNullable<NonNullable<Operation['plan']>['lens']>;

/** How many stock powers are shown about the planned one, to either side. */
const NEAR = 4;

/** What is known of a lens field from the plan, the department's list and the scanned label. */
export function lensOffers(path: Path, note: Operation | undefined, department: Department | null): readonly Offer[] {
  const field = path.at(-1);
  const where = path.slice(0, -1).join('.');
  const own = lensAt(note, where);
  const planned = where.startsWith('plan.') ? undefined : note?.plan?.lens;
  const listed = department?.lenses?.items ?? [];
  if (field === 'maker') {
    return once([...asPlanned(planned?.maker?.text), ...listed.map((lens) => fromList(lens.maker?.text))]);
  }
  if (field === 'model') return once([...asPlanned(planned?.model?.text), ...models(listed, own?.maker?.value)]);
  if (field === 'power') {
    return once([...asPlanned(planned?.power?.text), ...powersNear(listed, own ?? planned, planned)]);
  }
  if (field === 'kind' || field === 'cylinder' || field === 'axis') return asPlanned(planned?.[field]?.text);
  if (field === 'pieces' || field === 'material' || field === 'optic-diameter') {
    return listed.filter((lens) => isSame(lens, own)).map((lens) => fromList(lens[field]?.text));
  }
  if (where === 'lens' && (field === 'serial' || field === 'lot' || field === 'expiry')) return fromLabel(note, field);
  return [];
}

function lensAt(note: Operation | undefined, where: string): Partial<NamedLens> | undefined {
  if (where === 'lens') return note?.lens;
  if (where === 'plan.lens') return note?.plan?.lens;
  if (where === 'plan.spare-lens') return note?.plan?.['spare-lens'];
  return where === 'safety.lens-verified' ? note?.safety?.['lens-verified'] : undefined;
}

function asPlanned(text: string | undefined): readonly Offer[] {
  return text === undefined ? [] : [{ text, from: 'as planned', explanation: 'Check it against the lens box.' }];
}

function fromList(text: string | undefined): Offer {
  return { text: text ?? '', from: "department's list" };
}

function models(listed: readonly ListedLens[], maker: string | undefined): readonly Offer[] {
  const ofMaker = listed.filter((lens) => maker === undefined || lens.maker?.value === maker);
  return (ofMaker.length > 0 ? ofMaker : listed).map((lens) => ({
    text: lens.model?.text ?? '',
    from: [lens.maker?.text, lens.kind?.text].filter((part) => part !== undefined).join(', '),
    explanation: describe(lens),
  }));
}

function describe(lens: ListedLens): string {
  const { powers, constants } = lens;
  const range = powers?.from && powers.to ? `In stock from ${powers.from.text} to ${powers.to.text}. ` : '';
  const named =
    constants === undefined
      ? []
      : CONSTANTS.flatMap(([key, name]) => (constants[key] ? [`${name} ${constants[key].text}`] : []));
  const list = named.length === 0 ? 'No constants are listed.' : `Constants: ${named.join(', ')}.`;
  return `${range}${list} Constants are the user's responsibility.`;
}

const CONSTANTS = [
  ['a', 'A'],
  ['sf', 'surgeon factor'],
  ['pacd', 'pACD'],
  ['a0', 'a0'],
  ['a1', 'a1'],
  ['a2', 'a2'],
] as const;

function isSame(lens: ListedLens, other: Partial<NamedLens> | undefined): boolean {
  return lens.model?.value !== undefined && lens.model.value === other?.model?.value;
}

/** Powers in stock, nearest the planned one first; without a planned one there is nothing to be near to. */
function powersNear(
  listed: readonly ListedLens[],
  lens: Partial<NamedLens> | undefined,
  planned: NamedLens | undefined,
): readonly Offer[] {
  const powers = listed.find((each) => isSame(each, lens))?.powers;
  const [from, to, step] = [powers?.from?.value.amount, powers?.to?.value.amount, powers?.step?.value.amount];
  const centre = planned?.power?.value.amount;
  if (from === undefined || to === undefined || step === undefined || step <= 0 || centre === undefined) return [];
  const offers: Offer[] = [];
  for (let distance = 0; distance <= NEAR; distance++) {
    for (const sign of distance === 0 ? [1] : [1, -1]) {
      const power = from + Math.round((centre + sign * distance * step - from) / step) * step;
      if (power >= from && power <= to) offers.push({ text: writtenPower(power), from: 'in stock' });
    }
  }
  return offers;
}

function writtenPower(power: number): string {
  const text = power.toFixed(2).replace(/0$/u, '');
  return `${power > 0 ? '+' : ''}${text} D`;
}

function fromLabel(note: Operation | undefined, field: 'serial' | 'lot' | 'expiry'): readonly Offer[] {
  const udi = note?.lens?.udi?.value;
  if (udi === undefined) return [];
  const value = labelValue(readLabel(udi, yearOf(note)), field);
  return value === undefined ? [] : [{ text: value, from: 'scanned label' }];
}

/** The year that two-digit years of a label are counted from. */
export function yearOf(note: Operation | undefined): number {
  const date = note?.date?.text;
  return Number(/^\d{4}/u.exec(date ?? '')?.[0] ?? 2030);
}
