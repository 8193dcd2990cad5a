import { LOCALE } from './locale.js';

const POINT = new Intl.NumberFormat(LOCALE).formatToParts(0.5).find(({ type }) => type === 'decimal')?.value ?? '.';

/** A point between digits; not those of a version or an address. */
const DECIMAL = /(?<![\p{L}\d./])(\d+)\.(\d+)(?!\.?\d)/gu;
/** Marks of a page and what they hold that is no prose; what is heard of a mark. */
const MARK = /(<(script|style|code|pre)\b[\s\S]*?<\/\2>|<[^>]+>)/;
const HEARD = /(?<=\s(?:aria-label|title|alt)=")[^"]*/g;

/** The space between a number and its unit. */
const BEFORE_UNIT = /(?<=\d) (?=(?:%|N|kN|MPa|mm|cm|m|km|tex|g|kg|lbf|kgf|psi|°C|s|min|h)(?![\p{L}\d]))/gu;

/** A text with its decimal numbers as the language writes them, digit for digit, each on one line with its unit. */
export const figures = (text: string, point = POINT): string => text.replaceAll(DECIMAL, `$1${point}$2`).replaceAll(BEFORE_UNIT, '\u00a0');

/** A page with the numbers of its prose so; what programs read stays. */
export function figuresOfPage(html: string, point = POINT): string {
  const parts = html.split(MARK);
  // Of each mark the split also gives its name, which is no part of the page.
  return parts
    .filter((_, index) => index % 3 !== 2)
    .map((part, index) =>
      index % 2 === 0
        ? figures(part, point)
        : /^<(script|style|code|pre)\b/.test(part)
          ? part
          : part.replaceAll(HEARD, (heard) => figures(heard, point)),
    )
    .join('');
}
