import { LANGUAGE } from '../words/locale.js';

/** Said where it is not the language of the page, so that it is read aloud as what it is (WCAG 2.2, 3.1.2). */
const whereOther = (language: string) => (language === LANGUAGE ? undefined : language);

/** `lang` of what the program says in the answers of its API. */
export const OF_PROGRAM = whereOther('en');

/** `lang` of what the house has written: its first language. */
export const OF_HOUSE = whereOther(process.env['SITE_LANGUAGES']?.split(',')[0] ?? LANGUAGE);
