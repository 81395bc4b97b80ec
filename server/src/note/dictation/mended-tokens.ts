import { wordAt, type Token } from './tokens.ts';
import { digitOf, numberWords } from './whole-numbers.ts';

/** What a recogniser does to words and numbers, undone where only one reading is left; places stay those of the text. */
export function mendedTokens(tokens: readonly Token[]): readonly Token[] {
  return withMixedNumbers(withoutBrokenSentences(withoutDoubles(tokens)));
}

/** "Phaco with with lens", "at at one sixty": a word said twice counts once. Numbers may be meant twice. */
function withoutDoubles(tokens: readonly Token[]): readonly Token[] {
  const out: Token[] = [];
  for (const token of tokens) {
    const last = out.at(-1);
    if (last !== undefined && isSaidTwice(last, token)) out[out.length - 1] = { ...last, end: token.end };
    else out.push(token);
  }
  return out;
}

/** Letters may be spelled twice ("p m m a") and numbers meant twice. */
function isSaidTwice(last: Token, token: Token): boolean {
  return (
    last.kind === 'word' &&
    token.kind === 'word' &&
    token.word.length > 1 &&
    token.word === last.word &&
    !isNumberWord(token.word)
  );
}

/** "Two. Point four millimetres", "one hundred. And fifteen", "phaco. With lens implant": no sentence begins like this. */
function withoutBrokenSentences(tokens: readonly Token[]): readonly Token[] {
  return tokens.filter((token, at) => {
    if (token.kind !== 'break') return true;
    const [first, second] = [wordAt(tokens, at + 1) ?? '', wordAt(tokens, at + 2) ?? ''];
    if (first === 'with' && ['lens', 'iol', 'implant', 'intraocular'].includes(second)) return false;
    if (first === 'and' && wordAt(tokens, at - 1) === 'hundred' && isNumberWord(second)) return false;
    if (first === 'hundred' && isNumberWord(wordAt(tokens, at - 1) ?? '')) return false;
    if (first !== 'point') return true;
    const before = tokens[at - 1];
    const isNumber = before?.kind === 'number' || isNumberWord(before?.word ?? '');
    return !isNumber || !(tokens[at + 2]?.kind === 'number' || digitOf(wordAt(tokens, at + 2)) !== undefined);
  });
}

/** "One 75", "twenty 3", "five .2", "3 hundred and 50": digits among number words are read as words. */
function withMixedNumbers(tokens: readonly Token[]): readonly Token[] {
  return tokens.flatMap((token, at) => {
    if (token.kind !== 'number' || !isMixed(tokens, at)) return [token];
    return inWords(token.word).map((word): Token => ({ kind: 'word', word, start: token.start, end: token.end }));
  });
}

function isMixed(tokens: readonly Token[], at: number): boolean {
  const { word } = tokens[at]!;
  const [before, after] = [wordAt(tokens, at - 1) ?? '', wordAt(tokens, at + 1) ?? ''];
  if (/^\.\d+$/u.test(word)) return digitOf(before) !== undefined || numberWords.tens.has(before);
  if (!/^\d{1,2}$/u.test(word)) return false;
  if (after === 'hundred' || (after === 'point' && digitOf(wordAt(tokens, at + 2)) !== undefined)) return true;
  if (word.length === 1 && numberWords.tens.has(before)) return true;
  if (word.length === 1 && digitOf(before) !== undefined && pointBefore(tokens, at - 1)) return true;
  // “Three 10-0 nylon” are three sutures.
  const isGauge = ['-', '/', 'zero', 'oh', 'o', 'nought'].includes(after) || tokens[at + 1]?.word === '0';
  if (word.length === 2 && !isGauge && digitOf(before) !== undefined && before !== 'oh') return true;
  return before === 'hundred' || (before === 'and' && wordAt(tokens, at - 2) === 'hundred');
}

/** Whether a decimal point was said a few digits before a place. */
function pointBefore(tokens: readonly Token[], at: number): boolean {
  let back = at;
  while (digitOf(wordAt(tokens, back)) !== undefined) back -= 1;
  return wordAt(tokens, back) === 'point';
}

function inWords(digits: string): readonly string[] {
  if (digits.startsWith('.'))
    return ['point', ...Array.from(digits.slice(1), (digit) => numberWords.digit(Number(digit)))];
  const value = Number(digits);
  if (value < 10) return [numberWords.digit(value)];
  if (value < 20) return [numberWords.teen(value)];
  const rest = value % 10;
  return rest === 0 ? [numberWords.ten(value)] : [numberWords.ten(value - rest), numberWords.digit(rest)];
}

function isNumberWord(word: string): boolean {
  return digitOf(word) !== undefined || numberWords.tens.has(word) || numberWords.teens.has(word) || word === 'hundred';
}
