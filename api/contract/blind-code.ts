/** What a tester sees in place of maker and line: six random characters and a check character. */

/** Digits and capitals without 0, O, 1 and I, which are read for one another. */
const ALPHABET = '23456789ABCDEFGHJKLMNPQRSTUVWXYZ';
const ISO_ALPHABET = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ';
const BODY_LENGTH = 6;
/** One draw in nine ends on an ambiguous check character; a hundred in a row mean that the source of chance is broken. */
const MOST_DRAWS = 100;

/**
 * Check character of the hybrid system MOD 37,36: it finds every single wrong character and nearly all neighbours exchanged.
 * @param body digits and capital letters
 * @see ISO 7064:2003, MOD 37,36
 */
export function checkCharacter(body: string): string {
  let remainder = 36;
  for (const character of body) {
    const sum = (remainder + ISO_ALPHABET.indexOf(character)) % 36 || 36;
    remainder = (sum * 2) % 37;
  }
  return ISO_ALPHABET.charAt((37 - remainder) % 36);
}

/**
 * Draws a blind code; one whose check character would be ambiguous is drawn again.
 * @param below gives a whole number from 0 to below its limit, unpredictable
 * @throws Error when the source of chance repeats itself
 */
export function drawBlindCode(below: (limit: number) => number): string {
  for (let draw = 0; draw < MOST_DRAWS; draw++) {
    const body = Array.from({ length: BODY_LENGTH }, () => ALPHABET.charAt(below(ALPHABET.length))).join('');
    const check = checkCharacter(body);
    if (ALPHABET.includes(check)) return body + check;
  }
  throw new Error(
    `drawBlindCode: ${MOST_DRAWS} draws without a usable code, expected eight usable ones in nine. Look at the source of random numbers.`,
  );
}

/** A code as somebody types it → as it is on record: capitals, no spaces or hyphens. */
export const normaliseBlindCode = (typed: string): string => typed.replace(/[\s-]/g, '').toUpperCase();

/** Whether a code was drawn by this scheme, that is, whether nothing was mistyped. */
export function isBlindCode(code: string): boolean {
  const hasForm = code.length === BODY_LENGTH + 1 && Array.from(code).every((character) => ALPHABET.includes(character));
  return hasForm && checkCharacter(code.slice(0, BODY_LENGTH)) === code.slice(BODY_LENGTH);
}
