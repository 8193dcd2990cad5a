/** Compiles the site of a house without texts of its own, while an image is made: its workers render releases without a compiler. */
import { readConfig } from './config.js';
import { compiledSite, IN_IMAGE } from './releases/site/site-program.js';

const { PATH } = readConfig();
for (const language of ['en', 'de'] as const)
  await compiledSite({ DATA_FOLDER: IN_IMAGE, SITE_LANGUAGES: [language], HOUSE_TEXTS: '', PATH }, language);
