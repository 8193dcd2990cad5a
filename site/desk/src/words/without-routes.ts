const ROUTE = /(?:: | \()(?:GET|POST|PUT|PATCH|DELETE) \/v1\/[^\s;,.)]+(?: with \w+)?\)?/g;

/** Words of the API without the addresses that they name for programs: on the desk each is done by a press. */
export const withoutRoutes = (words: string): string => words.replace(ROUTE, '');
