import { competitionTies } from './competition-ties.js';
import { movement } from '../../measurement/ranking/movement/movement.js';
import type {
  Category,
  EditionDocument,
  EditionOfDivisions,
  Movement,
  OverallRow,
  VariantName,
} from '../../contract/documents/release-documents.js';
import { keyOf } from '../results/quantity.js';
import { needsOf, unplacedBecause } from '../results/eligibility.js';
import { chancesOf } from './chances-of.js';
import { comparabilityOf } from './comparability.js';
import { movementOf } from './movement-of.js';
import { headingOf, nameOf } from './release-context.js';
import type { DivisionEvidence, EditionEvidence } from '../evidence/edition-evidence.js';
import type { EditionContext, ReleaseContext } from './release-context.js';
import { supersededIn } from './superseded-in.js';
import { sensitivityBeside } from './sensitivity.js';

/** A category of the scheme as published, with the method version that was pinned and whether it compares with the edition before. */
export function categoriesOf(context: ReleaseContext): Category[] {
  const { edition, quantities } = context.computed;
  return edition.scheme.rules.categories.map((category) => {
    const unplaced = unplacedBecause(category, context.computed);
    const { code, name, unit, tradeUnit, direction, weight, method, series, section, conditions } = category;
    return {
      code,
      name,
      quantity: keyOf(category),
      quantityName: quantities.find(({ key }) => key === keyOf(category))?.name ?? name,
      unit,
      tradeUnit,
      direction,
      weight,
      method,
      series,
      section,
      methodVersion: edition.methods.find(({ slug }) => slug === method)?.number ?? 0,
      conditions,
      comparability: comparabilityOf(context, category),
      ...(unplaced ? { unplaced } : {}),
    };
  });
}

/** The edition's own page: overall standings, incomplete and excluded entries, the scheme, the evidence. */
export function editionDocument(context: ReleaseContext, erratum: EditionDocument['erratum']): EditionDocument {
  const { edition } = context.computed;
  const { slug, name, words, number, rules } = edition.scheme;
  return {
    ...headingOf(context),
    ...(context.division ? { takes: context.division.takes, overruled: [...context.division.overruled] } : {}),
    previousEdition: edition.previous,
    scheme: {
      slug,
      name,
      words,
      version: number,
      combine: rules.combine,
      countPlaces: rules.countPlaces,
      tieBreak: rules.tieBreak,
      categories: categoriesOf(context),
    },
    counts: countsOf(context.evidence),
    overall: overallRows(context),
    incomplete: incompleteOf(context),
    excluded: exclusionsOf(context),
    ...(edition.amendments ? { amendments: [...edition.amendments] } : {}),
    ...supersededIn(context.evidence, new Set(edition.entries.map(({ variant }) => variant))),
    categoryTops: rules.categories.map(({ code }) => ({ category: code, variants: topOf(context, code) })),
    sensitivity: sensitivityBeside(context.certainty),
    erratum,
  };
}

/** `documents/edition.json` of an edition with several divisions: what they are. */
export function editionOfDivisions(context: EditionContext, divisions: readonly DivisionEvidence[], erratum: EditionDocument['erratum']) {
  const { edition } = context.evidence;
  return {
    ...headingOf(context),
    previousEdition: edition.previous,
    divisions: divisions.map(({ slug, name, takes, variants }) => ({ slug, name, takes, variants: [...variants] })),
    counts: countsOf(context.evidence),
    ...(edition.amendments ? { amendments: [...edition.amendments] } : {}),
    erratum,
  } satisfies EditionOfDivisions;
}

function countsOf({ edition, submissions }: EditionEvidence): EditionDocument['counts'] {
  const specimens = submissions.flatMap((submission) => submission.specimens);
  return {
    entries: edition.entries.length,
    submissions: submissions.length,
    specimens: specimens.length,
    testers: new Set(submissions.map(({ tester }) => tester)).size,
    rigs: new Set(
      submissions.flatMap(({ instruments }) =>
        instruments.filter(({ kind }) => kind === 'loadFrame' || kind === 'forceGauge').map(({ code }) => code),
      ),
    ).size,
    setAside: specimens.filter(({ state }) => state === 'setAside').length,
  };
}

function incompleteOf(context: ReleaseContext): EditionDocument['incomplete'] {
  const { edition, standings } = context.computed;
  return standings.incomplete.map(({ id, missing }) => ({
    variant: nameOf(context, id),
    missing: [...missing],
    needs: edition.scheme.rules.categories.flatMap((category) => needsOf(category, id, context.computed)),
  }));
}

/** The top group of a category; where certainty is not stated, whoever is in first place. */
function topOf(context: ReleaseContext, code: string): VariantName[] {
  const rows = context.computed.standings.categories[code] ?? [];
  const certainty = context.certainty.categories.get(code);
  const isTop = ({ id, place }: (typeof rows)[number]) => (certainty?.size ? certainty.get(id)?.group === 1 : place === 1);
  return rows.filter(isTop).map(({ id }) => nameOf(context, id));
}

/** Rows of the overall standings, best first. */
export function overallRows(context: ReleaseContext): OverallRow[] {
  const { standings } = context.computed;
  const moves = overallMovement(context);
  const isTied = competitionTies(standings.overall.map(({ place }) => place));
  return standings.overall.map(({ id, place, placeIfIncluded, score, categoryPlaces }, i) => {
    const variant = nameOf(context, id);
    const certain = context.certainty.overall.get(id);
    return {
      variant,
      place,
      placeIfIncluded,
      isTied: isTied[i] ?? false,
      group: certain?.group ?? null,
      placeInterval: certain ? { low: certain.low, high: certain.high } : null,
      couldBeFirst: certain?.couldBeFirst ?? null,
      movement: movementOf(moves.get(variant.slug), place),
      ...chancesOf(certain),
      score,
      categoryPlaces: { ...categoryPlaces },
    };
  });
}

function overallMovement(context: ReleaseContext): Map<string, Movement> {
  const now = context.computed.standings.overall.map(({ id, place }) => ({ id: id, place }));
  return movement(
    now,
    context.earlier.map(({ overall }) => overall.map(({ variant, place }) => ({ id: variant, place }))),
  );
}

/** Entries left out, with reason and effect, by name. */
export function exclusionsOf(context: ReleaseContext): EditionDocument['excluded'] {
  const { edition, standings } = context.computed;
  return edition.entries.flatMap(({ variant, exclusion }) => {
    if (!exclusion) return [];
    const row = standings.overall.find(({ id }) => id === variant);
    const reasonCode = exclusion.reasonCode as EditionDocument['excluded'][number]['reasonCode'];
    return [
      {
        variant: nameOf(context, variant),
        reasonCode,
        words: exclusion.words,
        effect: exclusion.effect,
        placeIfIncluded: row?.placeIfIncluded ?? null,
      },
    ];
  });
}
