import type { Identifiers } from '../../api/platform/identifiers/identifiers.js';
import { csvFile, diameterRows, inventPullsOf, inventPieces, pullRows } from './hand-in-csv.js';
import { acceptAll, fitOutHouse, openEdition, VARIANTS } from './season.js';
import type { InventedVariant } from './season.js';
import { createTestApplication } from './test-application.js';
import type { Caller, TestApplication } from './test-application.js';

/** An application with a fitted-out bench and one person in each role of the work. */
export interface House {
  readonly t: TestApplication;
  readonly editor: Caller;
  readonly reviewer: Caller;
  readonly tester: Caller;
  /** Variant → blind code of its spool. */
  readonly codes: ReadonlyMap<string, string>;
}

export async function createHouse(identifiers?: Identifiers, env: Record<string, string> = {}): Promise<House> {
  const t = await createTestApplication(env, identifiers);
  const editor = await t.caller(['editor'], 'E. Sallow');
  const reviewer = await t.caller(['reviewer'], 'R. Dunlin');
  const tester = await t.caller(['tester'], 'A. Fenn');
  return { t, editor, reviewer, tester, codes: await fitOutHouse(editor) };
}

export interface EditionWork {
  readonly variants?: readonly InventedVariant[];
  /** Another seed scatters the readings otherwise around the same means. */
  readonly seed?: number;
  readonly benchDay?: string;
  readonly pullVersion?: number;
  /** What the request to plan the edition has besides. */
  readonly change?: object;
}

/** Hands in all four methods of each variant in one file. */
export async function handInEdition(
  { tester, codes }: Pick<House, 'tester' | 'codes'>,
  edition: string,
  { variants = VARIANTS, seed = 0, benchDay = '2026-03-10', pullVersion = 1 }: EditionWork = {},
): Promise<void> {
  const rows = variants.flatMap((variant, i) => {
    const at = { edition, spool: codes.get(variant.slug) ?? '', instrument: 'R1', benchDay };
    return [
      ...pullRows({ ...at, methodVersion: pullVersion }, 'straight-pull', inventPullsOf(variant, 'straight-pull', seed + i)),
      ...diameterRows({ ...at, instrument: 'M1' }, inventPieces(variant, seed + i)),
      ...pullRows(at, 'named-knot', inventPullsOf(variant, 'named-knot', seed + i + 1)),
      ...pullRows(at, 'abrasion', inventPullsOf(variant, 'abrasion', seed + i + 2)),
    ];
  });
  await tester.call('post', '/v1/submissions').set('Content-Type', 'text/csv').send(csvFile(rows)).expect(201);
}

/** From the opening to the last review. */
export async function workEdition(house: Omit<House, 't'>, edition: string, work: EditionWork = {}): Promise<void> {
  const entries = (work.variants ?? VARIANTS).map(({ slug }) => slug);
  await openEdition(house.editor, edition, entries, work.change);
  await handInEdition(house, edition, work);
  await acceptAll(house.reviewer, edition);
}
