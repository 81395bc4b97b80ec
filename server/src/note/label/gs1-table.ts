import type { LabelPartKind } from './reading.ts';

/** How one kind of GS1 element is written. */
export interface Gs1Element {
  /** Application identifier: the digits in front of the value. */
  readonly ai: string;
  readonly title: string;
  readonly kind: LabelPartKind;
  readonly characters: 'digits' | 'set-82';
  readonly shortest: number;
  readonly longest: number;
  /** True when the length is fixed by the standard, so that no separator follows. */
  readonly predefined: boolean;
  readonly check?: 'digit' | 'pair';
  readonly date?: boolean;
  /** Groups of identifiers of which the label must hold one. */
  readonly needs: readonly (readonly string[])[];
  readonly excludes: readonly string[];
}

const TRADE_ITEM = ['01', '02', '8006', '8026'];

type Extra = Partial<Pick<Gs1Element, 'kind' | 'check' | 'date' | 'needs' | 'excludes' | 'predefined'>>;

function row(ai: string, title: string, spec: string, extra: Extra = {}): Gs1Element {
  const range = spec.slice(1);
  const longest = Number(range.replace('..', ''));
  return {
    ai,
    title,
    kind: 'other',
    characters: spec.startsWith('N') ? 'digits' : 'set-82',
    shortest: range.startsWith('..') ? 1 : longest,
    longest,
    predefined: false,
    needs: [],
    excludes: [],
    ...extra,
  };
}

const day = (ai: string, title: string, kind: LabelPartKind, needs = TRADE_ITEM): Gs1Element =>
  row(ai, title, 'N6', { kind, date: true, predefined: true, needs: [needs] });

/**
 * The elements that may stand on the box of a lens, and those that share its symbol.
 * Source: GS1 Barcode Syntax Dictionary (Apache-2.0), the rows of these identifiers.
 */
export const GS1_ELEMENTS: readonly Gs1Element[] = [
  row('00', 'shipping container', 'N18', { check: 'digit', predefined: true }),
  row('01', 'device number', 'N14', {
    kind: 'device-identifier',
    check: 'digit',
    predefined: true,
    excludes: ['02', '255', '37'],
  }),
  row('02', 'number of the contents', 'N14', { check: 'digit', predefined: true, needs: [['37']] }),
  row('10', 'lot', 'X..20', { kind: 'lot', needs: [TRADE_ITEM] }),
  day('11', 'production date', 'made'),
  day('13', 'packaging date', 'other'),
  day('15', 'best-before date', 'other'),
  day('16', 'sell-by date', 'other'),
  day('17', 'expiry date', 'expiry', ['01', '02', '255', '8006', '8026']),
  row('20', 'variant', 'N2', { predefined: true, needs: [TRADE_ITEM] }),
  row('21', 'serial number', 'X..20', { kind: 'serial', needs: [['01', '8006']], excludes: ['235'] }),
  row('22', 'consumer variant', 'X..20', { needs: [['01']] }),
  row('235', 'third-party serial number', 'X..28', { needs: [['01']] }),
  row('240', 'additional identification', 'X..30', { needs: [TRADE_ITEM] }),
  row('241', 'customer part number', 'X..30', { needs: [TRADE_ITEM] }),
  row('242', 'made-to-order variant', 'N..6', { needs: [TRADE_ITEM] }),
  row('243', 'packaging component', 'X..20', { needs: [['01']] }),
  row('250', 'secondary serial number', 'X..30', { needs: [['01', '8006'], ['21']] }),
  row('251', 'reference to the source', 'X..30', { needs: [['01', '8006']] }),
  row('30', 'variable count', 'N..8', { kind: 'quantity', needs: [['01', '02']] }),
  row('37', 'count of the contents', 'N..8', { needs: [['00'], ['02', '8026']] }),
  row('400', 'order number', 'X..30'),
  row('422', 'country of origin', 'N3', { needs: [TRADE_ITEM] }),
  ...['710', '711', '712', '713', '714', '715', '716', '717'].map((ai) =>
    row(ai, 'national reimbursement number', 'X..20', { needs: [['01']] }),
  ),
  row('7003', 'expiry date and time', 'N10', { needs: [['01', '02']] }),
  row('7240', 'protocol', 'X..20', { needs: [['01', '8006']] }),
  row('8012', 'software version', 'X..20', { needs: [['01', '8006']] }),
  row('8013', 'model number', 'X..25', { check: 'pair' }),
  row('8014', 'master device number', 'X..25', { check: 'pair', needs: [['01']] }),
  row('8200', 'product address', 'X..70', { needs: [['01']] }),
  row('90', 'agreed between partners', 'X..30'),
  ...['91', '92', '93', '94', '95', '96', '97', '98', '99'].map((ai) => row(ai, 'company internal', 'X..90')),
];

const BY_AI = new Map(GS1_ELEMENTS.map((element) => [element.ai, element]));

export function gs1Element(ai: string): Gs1Element | undefined {
  return BY_AI.get(ai);
}

/** The element whose identifier stands at a place of scanned data; no identifier is the start of another. */
export function gs1ElementAt(text: string, at: number): Gs1Element | undefined {
  return [2, 3, 4].map((length) => BY_AI.get(text.slice(at, at + length))).find((found) => found !== undefined);
}
