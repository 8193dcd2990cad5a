/** A question to a tester names specimens to look at, never how far off they are: a quantity or a direction in it would tell. */
import { UNITS } from '../measurement/units/unit-table.js';

const escape = (symbol: string): string => symbol.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
/** Written with a number that is none of its own: "specimen 3 in the file". */
const ORDINARY_WORDS = ['in'];
const AS_PEOPLE_WRITE = ['per\\s?cent', 'lb', 'kg', 'oz', 'inch(?:es)?', 'cN'];
const SYMBOLS = Object.keys(UNITS).filter((symbol) => !ORDINARY_WORDS.includes(symbol));
/** The longest first, so that the whole of it is quoted. */
const UNIT_WORDS = [...SYMBOLS.map(escape), ...AS_PEOPLE_WRITE].sort((a, b) => b.length - a.length);
const NUMBER_WITH_UNIT = new RegExp(`\\d+(?:[.,]\\d+)?\\s*(?:${UNIT_WORDS.join('|')})(?![A-Za-z])`);
const DECIMAL = /\d+[.,]\d+/;
const DIRECTION =
  /\b(too (high|low|much|little|many|few|strong|weak)|high(er|est)?|low(er|est)?|(strong|weak|heav(y|i)|light|thick|thin|larg|small|big)(er|est)|twice|half|double[ds]?|triple[ds]?|outliers?|above|below|factor of|times (more|less))\b/i;

/** The first words of a question that hold a size or a direction; null where none does. */
export const whatTells = (question: string): string | null =>
  [NUMBER_WITH_UNIT, DECIMAL, DIRECTION].flatMap((telling) => telling.exec(question)?.[0] ?? [])[0] ?? null;
