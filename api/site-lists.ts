/** Lists beside the releases that the site shows, at the paths where the API answers with them. */
import { problemsAnswer } from './error-catalogue.js';
import { csvColumnsAnswer } from './submissions/intake/csv-columns.js';

export const SITE_LISTS = {
  '/v1/problems': problemsAnswer(),
  '/v1/submissions/csv-columns': csvColumnsAnswer(),
};
