import { runSql } from './run-sql.js';

/** What every house of the tests says of itself, so that it may publish. */
export const HOUSE_STATEMENT = {
  contact: 'bench@house.example',
  people: [{ name: 'E. Sallow', does: 'edits' }],
  funding: 'Its members pay.',
  interests: 'Nobody has a tie to a maker.',
  rightOfReply: 'A maker replies to bench@house.example; the reply stands beside the figure.',
};

/** Says it from before any edition. @param databaseUrl of the owner */
export const stateHouse = (databaseUrl: string): Promise<unknown> =>
  runSql(
    databaseUrl,
    `INSERT INTO "house_statement" ("id", "number", "contact", "people", "funding", "interests", "right_of_reply", "by_id", "at")
     VALUES ('01900000-0000-7000-8000-000000000000', 1, $1, $2, $3, $4, $5, '01900000-0000-7000-8000-000000000000', '2020-01-01')`,
    [
      HOUSE_STATEMENT.contact,
      JSON.stringify(HOUSE_STATEMENT.people),
      HOUSE_STATEMENT.funding,
      HOUSE_STATEMENT.interests,
      HOUSE_STATEMENT.rightOfReply,
    ],
  );
