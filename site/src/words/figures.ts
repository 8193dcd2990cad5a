import { LOCALE } from './locale.js';

const POINT = new Intl.NumberFormat(LOCALE).formatToParts(0.5).find(({ type }) => type === 'decimal')?.value ?? '.';

/** A point between digits; not those of a version, an address, or a size that is a name and stands as labels print it (`PE 1.0`). */
const DECIMAL = /(?<![\p{L}\d./]|PE[ \u00a0])(\d+)\.(\d+)(?!\.?\d)/gu;

/** The space between a number and its unit. */
const BEFORE_UNIT = /(?<=\d) (?=(?:%|N|kN|MPa|mm|cm|m|km|tex|g|kg|lbf|kgf|psi|°C|s|min|h)(?![\p{L}\d]))/gu;

/** A text with its decimal numbers as the language writes them, digit for digit, each on one line with its unit. */
export const figures = (text: string, point = POINT): string =>
  (point === '.' ? text : text.replaceAll(DECIMAL, `$1${point}$2`)).replaceAll(BEFORE_UNIT, '\u00a0');

/** What of a page may be prose with a number in it, between marks or as what is heard of one; and what is none, whatever it holds. */
const WITH_NUMBER =
  /<(script|style|code|pre|\w+(?=[^<>]* translate="no"))\b[\s\S]*?<\/\1>|(?:^|(?<=>))[^<]*\d[. ][^<]*|\s(?:aria-label|title|alt)="[^"]*\d[. ][^"]*/g;

/** A page with the numbers of its prose so; what programs read stays. */
export const figuresOfPage = (html: string, point = POINT): string =>
  html.replaceAll(WITH_NUMBER, (part, programs: string | undefined) => (programs === undefined ? figures(part, point) : part));
