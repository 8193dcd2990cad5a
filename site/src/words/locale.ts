import { say } from './say.js';

/** Language and region of the words, as `Intl` and `lang` have it (BCP 47). */
export const LOCALE = say`en-GB`;
export const LANGUAGE = new Intl.Locale(LOCALE).language;

/** Numbers within names stand in the order of their values. */
export const inNameOrder = new Intl.Collator(LOCALE, { numeric: true }).compare;

/** A name that begins with a capital, within a sentence; its abbreviations stay, and languages that write nouns with one keep it. */
export const withinSentence = (name: string): string =>
  say`nouns small` === 'nouns small' ? name.replace(/^\p{Lu}(?!\p{Lu})/u, (first) => first.toLowerCase()) : name;

/** `Knot retention, Palomar` within a list: `knot retention (Palomar)`. */
export const withinList = (name: string): string => name.replace(/^./, withinSentence).replace(/, (.+)$/, ' ($1)');
