import { foldWord } from './spelling.ts';

/**
 * A piece of a dictation. `word` is the folded spelling of a word or of a symbol read aloud, the digits of a
 * number, or the mark of a break.
 */
export interface Token {
  readonly kind: 'word' | 'number' | 'break';
  readonly word: string;
  readonly start: number;
  readonly end: number;
  /** Breaks only: a sentence ends here, or a part of one. */
  readonly strength?: 'sentence' | 'part';
  /** A colon or a question mark: what follows answers what stands before it. */
  readonly asks?: boolean;
  /** Numbers only: part of the name of a model, such as Q40 or HX-1. */
  readonly named?: boolean;
}

const piece =
  /\d{4}-\d{2}-\d{2}|\d{1,2}:\d{2}(?![\d:])|\p{L}(?:\.\p{L})+(?:\.(?=\s*[\p{Ll}\d,:;]))?(?!\p{L})|[-−+]ve\b|\d+(?:[.,·]\d+)?|(?<![\d.])\.\d+|\p{L}[\p{L}\p{M}]*(?:['’ʼ]\p{L}+)*['’ʼ]?|\r\n|\r|\n|[^\s]/gu;

/** Symbols as they are read aloud. Others stand for themselves. */
const aloud: Readonly<Record<string, string>> = {
  '+': 'plus',
  '%': 'percent',
  '°': 'degrees',
  º: 'degrees',
  '&': 'and',
  '@': 'at',
  '=': 'is',
  '×': 'x',
  '~': 'about',
};

const vulgarFractions: Readonly<Record<string, string>> = { '½': '.5', '¼': '.25', '¾': '.75' };

const sentenceMarks = new Set(['.', ';', '!', '?']);
const partMarks = new Set([',', ':', '(', ')', '[', ']', '–', '—']);

/** Spoken marks: the words, and the mark they stand for. A period is also a stretch of time: see below. */
const spokenMarks: readonly (readonly [readonly string[], string])[] = [
  [['full', 'stop'], '.'],
  [['new', 'paragraph'], '.'],
  [['next', 'paragraph'], '.'],
  [['new', 'line'], '.'],
  [['next', 'line'], '.'],
  [['newline'], '.'],
  [['semi', 'colon'], '.'],
  [['semicolon'], '.'],
  [['period'], '.'],
  [['exclamation', 'mark'], '.'],
  [['question', 'mark'], '.'],
  [['comma'], ','],
  [['colon'], ','],
  [['open', 'bracket'], ','],
  [['open', 'brackets'], ','],
  [['close', 'bracket'], ','],
  [['close', 'brackets'], ','],
  [['hyphen'], '-'],
  [['dash'], '-'],
];

const marksByFirst = new Map<string, typeof spokenMarks>();
for (const mark of spokenMarks) {
  const first = mark[0][0] ?? '';
  marksByFirst.set(first, [...(marksByFirst.get(first) ?? []), mark]);
}

/** Splits a dictation into tokens with their offsets; spoken punctuation becomes the mark it names. */
export function tokensOf(text: string): readonly Token[] {
  const written: Token[] = [];
  for (const match of text.matchAll(piece)) written.push(...tokensFrom(match, text));
  return withSpokenMarks(written);
}

/** "Serial no. 1234": the full stop of a shortened word. */
const shortened = /\b(?:serial|lot|batch)\s+no$/iu;

/** One or two capitals that a number is joined to; an axial length is no model. */
const modelName = /(?:^|[^\p{L}])(?!AL)\p{Lu}{1,2}-?$/u;

function tokensFrom(match: RegExpExecArray, text: string): Token[] {
  const raw = match[0];
  const start = match.index;
  const end = start + raw.length;
  if (/^\p{L}\./u.test(raw)) return [{ kind: 'word', word: foldWord(raw.replaceAll('.', '')), start, end }];
  if (/^\p{L}/u.test(raw)) return [{ kind: 'word', word: foldWord(raw), start, end }];
  if (/^\d{4}-/u.test(raw)) return [{ kind: 'number', word: raw, start, end }];
  if (/^\.?\d/u.test(raw)) {
    const number: Token = { kind: 'number', word: raw.replace(/[,·]/u, '.'), start, end };
    return [modelName.test(text.slice(Math.max(0, start - 4), start)) ? { ...number, named: true } : number];
  }
  if (raw.endsWith('ve')) return [{ kind: 'word', word: raw.startsWith('+') ? 'positive' : 'negative', start, end }];
  if (/^[\r\n]/u.test(raw)) return [sentence(start, end)];
  if (
    raw === '.' &&
    /^\s*\d/u.test(text.slice(end, end + 3)) &&
    shortened.test(text.slice(Math.max(0, start - 12), start))
  )
    return [];
  if (raw === ':') return [{ ...part(start, end), asks: true }];
  if (raw === '?') return [{ ...sentence(start, end), asks: true }];
  if (sentenceMarks.has(raw)) return [sentence(start, end)];
  if (partMarks.has(raw)) return [part(start, end)];
  if (raw === '-' || raw === '−' || raw === '‑') return hyphen(text, start, end);
  const fraction = vulgarFractions[raw];
  if (fraction !== undefined) return [{ kind: 'number', word: fraction, start, end }];
  return [{ kind: 'word', word: aloud[raw] ?? raw, start, end }];
}

/** A hyphen is a minus before a number, a dash between numbers or alone, and nothing inside a compound word. */
function hyphen(text: string, start: number, end: number): Token[] {
  const before = text[start - 1] ?? ' ';
  const after = text[end] ?? ' ';
  if (/\d/u.test(before) && /\d/u.test(after)) return [{ kind: 'word', word: '-', start, end }];
  if (/[\s(,:]/u.test(before) && /[\d.]/u.test(after)) return [{ kind: 'word', word: 'minus', start, end }];
  if (/\s/u.test(before) && /\s/u.test(after)) return [part(start, end)];
  return [];
}

function sentence(start: number, end: number): Token {
  return { kind: 'break', word: '.', strength: 'sentence', start, end };
}

function part(start: number, end: number): Token {
  return { kind: 'break', word: ',', strength: 'part', start, end };
}

/** Words after which "period" is a stretch of time and no mark. */
const beforeTime = new Set([
  'a',
  'the',
  'this',
  'that',
  'operative',
  'postoperative',
  'perioperative',
  'recovery',
  'healing',
]);

function withSpokenMarks(tokens: readonly Token[]): readonly Token[] {
  const out: Token[] = [];
  for (let at = 0; at < tokens.length;) {
    const token = tokens[at]!;
    const found = (marksByFirst.get(token.word) ?? []).find(([words]) =>
      words.every((word, ahead) => tokens[at + ahead]?.word === word && tokens[at + ahead]?.kind === 'word'),
    );
    if (found === undefined || (token.word === 'period' && beforeTime.has(tokens[at - 1]?.word ?? ''))) {
      out.push(token);
      at += 1;
      continue;
    }
    const [words, mark] = found;
    const end = tokens[at + words.length - 1]!.end;
    if (mark === '-') out.push({ kind: 'word', word: '-', start: token.start, end });
    else out.push(mark === '.' ? sentence(token.start, end) : part(token.start, end));
    at += words.length;
  }
  return out;
}

/** The word at a position; undefined for a number, a break and the end. */
export function wordAt(tokens: readonly Token[], at: number): string | undefined {
  const token = tokens[at];
  return token?.kind === 'word' ? token.word : undefined;
}
