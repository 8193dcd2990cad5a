/** Which division of an edition an entry is in: the one that an editor says, else the one whose rule fits its line. Pure. */
import { schemeRules } from '../contract/endpoints/schemes.js';
import type { PlannedDivision } from '../contract/endpoints/editions.js';
import { divisionRuleSchema, takes } from '../contract/division.js';
import type { DivisionRule } from '../contract/division.js';
import type { Obstacle } from '../contract/obstacle.js';

export const WITH_DIVISIONS = { divisions: { include: { scheme: true }, orderBy: { position: 'asc' } } } as const;
export const WITH_DIVIDED = { ...WITH_DIVISIONS, entries: { include: { overruling: true } } } as const;

interface Division {
  readonly id: string;
  readonly materials: readonly string[];
  readonly constructions: readonly string[];
}

interface Entry {
  readonly overruling: { readonly divisionId: string } | null;
  readonly variant: { readonly slug: string; readonly line: { readonly material: string; readonly construction: string } };
}

/** The divisions that an entry may be in; one, unless rules leave gaps or overlap. */
export const divisionsOf = <D extends Division>(divisions: readonly D[], { overruling, variant: { line } }: Entry): D[] =>
  divisions.filter((division) => (overruling ? division.id === overruling.divisionId : takes(division, line)));

/** Entries that are in no division, or could be in several. */
export function divisionObstacles(divisions: readonly Division[], entries: readonly Entry[]): Obstacle[] {
  const where = (isSo: (count: number) => boolean) =>
    entries.filter((entry) => isSo(divisionsOf(divisions, entry).length)).map(({ variant }) => variant.slug);
  return [
    { code: 'no_division', what: 'No division takes', references: where((count) => count === 0) },
    { code: 'several_divisions', what: 'Several divisions take', references: where((count) => count > 1) },
  ].flatMap((one) => (one.references.length === 0 ? [] : [{ ...one, count: one.references.length, remedy: SETTLE }]));
}

interface PlannedRow extends Division {
  readonly slug: string | null;
  readonly name: string | null;
  readonly scheme: { readonly slug: string; readonly number: number };
}

interface SchemedRow extends PlannedRow {
  readonly scheme: PlannedRow['scheme'] & { readonly name: string; readonly words: string; readonly rules: unknown };
}

/** The scheme of an edition with one division, which has no name; else its divisions. */
function oneOrSeveral<D extends PlannedRow, S, N>(
  rows: readonly D[],
  scheme: (row: D) => S,
  named: (row: D, slug: string, name: string) => N,
) {
  const [first] = rows;
  if (!first) throw new Error('An edition has no division; expected at least one.');
  return first.slug === null ? { scheme: scheme(first) } : { divisions: rows.map((row) => named(row, row.slug ?? '', row.name ?? '')) };
}

const ruleOf = ({ materials, constructions }: Division): DivisionRule => divisionRuleSchema.parse({ materials, constructions });

/** What an edition is ranked by, as it is planned. */
export const plannedDivisions = (rows: readonly PlannedRow[]) =>
  oneOrSeveral(
    rows,
    ({ scheme: { slug, number } }) => ({ slug, number }),
    (row, slug, name): PlannedDivision => ({
      slug,
      name,
      takes: ruleOf(row),
      scheme: { slug: row.scheme.slug, number: row.scheme.number },
    }),
  );

/** What is compared in an edition, with the entries of each division; an entry that could be in several is in none. */
export function comparedIn(rows: readonly SchemedRow[], entries: readonly (Entry & { overruling: { reason: string } | null })[]) {
  const schemeOf = ({ scheme: { slug, number, name, words, rules } }: SchemedRow) => ({
    slug,
    number,
    name,
    words,
    rules: schemeRules.parse(rules),
  });
  return oneOrSeveral(rows, schemeOf, (row, slug, name) => {
    const own = entries.filter((entry) => {
      const [one, ...others] = divisionsOf(rows, entry);
      return one?.id === row.id && others.length === 0;
    });
    return {
      slug,
      name,
      takes: ruleOf(row),
      scheme: schemeOf(row),
      variants: own.map(({ variant }) => variant.slug),
      overruled: own.flatMap(({ variant, overruling }) => (overruling ? [{ variant: variant.slug, reason: overruling.reason }] : [])),
    };
  });
}

const SETTLE =
  'Change the rules of the divisions while the edition is planned (PATCH /v1/editions/{edition} with divisions), correct the line, or put each where it belongs with a reason: POST /v1/editions/{edition}/overrulings.';
