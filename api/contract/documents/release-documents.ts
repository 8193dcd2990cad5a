/**
 * The documents that a release carries and that readers get, byte for byte as stored. One schema is the type, the
 * validator, the serialiser and the documentation. Every number that is published is a decimal string at stated places.
 */
import { z } from 'zod';
import { amendmentSchema } from '../amendment.js';
import { divisionRuleSchema } from '../division.js';
import { traceSchema } from './trace.js';

/** Of the documents and the inputs that they are computed from; raised when a program of before could not read them. */
export const FORMAT_VERSION = 2;
const formatVersion = z
  .literal([1, FORMAT_VERSION])
  .describe('Version of this document format; since 2 methods state their series and quantities are named by them');

const decimal = z
  .string()
  .regex(/^-?\d+(\.\d+)?$/)
  .describe('A decimal number as text, rounded half-even to the places its method or scheme states');
const slug = z
  .string()
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)
  .describe('Readable identifier; never changes');
const quantity = z
  .string()
  .describe('What was measured, as a code: the quantity, its method and series, e.g. retention/fg-knot/knotted. A fixed name in format 1');
const quantityName = z.string().optional().describe('The same in words, e.g. "Knot retention, FG"; not told by format 1');
const date = z.iso.date().describe('Calendar date, ISO 8601');

export const tradeValueSchema = z
  .strictObject({
    unit: z.string().describe('Trade unit symbol'),
    value: decimal,
    low: decimal.nullable().describe('Lower end of the 95 % interval'),
    high: decimal.nullable().describe('Upper end of the 95 % interval'),
  })
  .describe('The same figure in the unit that the trade uses');

export const figureSchema = z
  .strictObject({
    quantity,
    name: quantityName,
    unit: z.string().describe('SI unit symbol'),
    value: decimal,
    low: decimal.nullable().describe('Lower end of the 95 % interval; null when it cannot be stated'),
    high: decimal.nullable().describe('Upper end of the 95 % interval; null when it cannot be stated'),
    trade: tradeValueSchema.nullable(),
    specimens: z.int().describe('Valid specimens behind the figure'),
    submissions: z.int().describe('Accepted submissions behind the figure'),
    testers: z.int().describe('Testers behind the figure'),
    rigs: z.int().describe('Rigs behind the figure'),
    note: z.string().nullable().describe('What a reader must know about this figure'),
  })
  .describe('A published figure with its 95 % interval and the evidence behind it');

export const variantNameSchema = z
  .strictObject({
    slug,
    maker: z.strictObject({ slug, name: z.string().describe('Name of the maker') }).describe('Maker'),
    line: z.strictObject({ slug, name: z.string().describe('Name of the line') }).describe('Line'),
    size: z.string().describe('Size as on the label'),
    colour: z.string().describe('Colour as on the label'),
    material: z.string().describe('Material, e.g. UHMWPE'),
    construction: z.enum(['braided', 'fused', 'hollowCore', 'twisted', 'monofilament']).describe('How the line is made'),
    carriers: z.int().nullable().describe('Ends braided; null where the line is not braided'),
    peNumber: decimal.nullable().describe('PE number on the label'),
    ratedStrength: z
      .strictObject({ value: decimal, unit: z.string().describe('Unit as printed') })
      .nullable()
      .describe('Rated strength as printed'),
  })
  .describe('What a variant is called');

export const movementSchema = z
  .strictObject({
    kind: z.enum(['moved', 'unchanged', 'new', 'returned', 'notComparable']).describe('Against the edition before'),
    places: z.int().nullable().describe('Places gained (positive) or lost (negative)'),
    runAtTop: z.int().describe('Editions in a row in first place, this one included'),
  })
  .describe('Movement against the edition before');

export const placeIntervalSchema = z
  .strictObject({ low: z.int(), high: z.int() })
  .describe('Places that the evidence allows, simultaneous over the table at 95 %');

const placed = {
  variant: variantNameSchema,
  place: z.int().nullable().describe('Competition place (1-2-2-4); null when not placed'),
  placeIfIncluded: z.int().nullable().describe('Place it would have had, shown in brackets, for a row shown unplaced'),
  isTied: z.boolean().describe('Shares its place with another'),
  group: z.int().nullable().describe('Too-close-to-call group, 1 is the top group'),
  placeInterval: placeIntervalSchema.nullable(),
  couldBeFirst: z
    .boolean()
    .nullable()
    .optional()
    .describe('Whether it belongs to the set that holds the best of the table with 95 % (comparison with the best); not told by format 1'),
  movement: movementSchema,
  chanceOfFirstPercent: decimal.nullable().describe('Chance of being first under the model'),
  chanceOfFirstFivePercent: decimal.nullable().describe('Chance of being among the first five under the model'),
  chanceAheadOfNextPercent: decimal.nullable().describe('Chance that this row and the next placed one are in the right order'),
};

export const overallRowSchema = z
  .strictObject({
    ...placed,
    score: decimal.describe('Score under the scheme, e.g. the sum of places'),
    categoryPlaces: z.record(z.string(), z.int()).describe('Category code → place counted in the score'),
  })
  .describe('A row of the overall standings');

export const categoryRowSchema = z
  .strictObject({
    ...placed,
    figure: figureSchema,
    placeInScore: z
      .int()
      .optional()
      .describe('Place that the overall score adds up, where it is another: it counts variants that are left out as well'),
    change: z
      .strictObject({
        kind: z
          .enum(['changed', 'withinNoise', 'notComparable', 'first'])
          .describe(
            'Whether the measured value changed beyond noise; of the changes that a table names at most one in twenty is noise (Benjamini–Hochberg)',
          ),
        percent: decimal.nullable().describe('Change of the measured value against the edition before'),
      })
      .describe('Change of the measured value'),
  })
  .describe('A row of a category');

export const categorySchema = z
  .strictObject({
    code: slug,
    name: z.string().describe('Name on the page'),
    quantity,
    quantityName,
    unit: z.string().describe('SI unit'),
    tradeUnit: z.string().nullable().describe('Trade unit'),
    direction: z.enum(['more', 'less']).describe('Whether more or less is better'),
    weight: decimal.describe('Weight in the scheme'),
    method: slug.describe('Method'),
    methodVersion: z.int().describe('Version of the method'),
    series: slug.optional().describe('Series of the method; not told by format 1'),
    section: z
      .strictObject({ method: slug, series: slug })
      .nullable()
      .optional()
      .describe('Method and series of the diameters that a stress is taken over; null of other quantities, not told by format 1'),
    conditions: z.string().describe('Conditions that define the category'),
    comparability: z.enum(['same', 'changed', 'notComparable', 'first']).describe('Against the edition before'),
  })
  .describe('What is ranked');

export const exclusionSchema = z
  .strictObject({
    variant: variantNameSchema,
    reasonCode: z.enum(['notObtainable', 'labelInDoubt', 'duplicate', 'makersRequestRefused', 'interest']).describe('Why'),
    words: z.string().describe('Why, in words'),
    effect: z.enum(['closedUp', 'shownUnplaced']).describe('Whether the others move up'),
    placeIfIncluded: z.int().nullable().describe('Overall place it would have had'),
  })
  .describe('A variant left out, with the reason');

export const erratumSchema = z
  .strictObject({
    reasonCode: z.enum(['withdrawal', 'reidentification', 'methodError', 'catalogueError']).describe('Why'),
    words: z.string().describe('What changed and why'),
    expected: z
      .array(z.strictObject({ where: z.string(), before: z.string() }))
      .describe('What the correction took for published, and found'),
    changes: z
      .array(
        z.strictObject({ where: z.string().describe('Document and row'), before: z.string().nullable(), after: z.string().nullable() }),
      )
      .describe('Changed cells'),
    consequences: z.string().describe('Computed consequences, e.g. "3 values changed, 2 places"'),
  })
  .describe('What a later revision changed');

/** A division by name. */
export const divisionNameSchema = z
  .strictObject({ slug, name: z.string().describe('Name of the division') })
  .describe(
    'The division of an edition that a document is of; none of one that is of the whole edition, or of an edition with one division',
  );

/** What every document of a release begins with. */
export const heading = {
  formatVersion,
  house: z.string().describe('Who publishes'),
  isDemo: z.boolean().describe('Whether the figures are invented for demonstration'),
  edition: z.strictObject({ slug, name: z.string().describe('Name'), openedOn: date, closedOn: date }).describe('The edition'),
  division: divisionNameSchema.optional(),
  revision: z.int().describe('Revision of the release'),
  publishedAt: z.iso.datetime().describe('When it was published, UTC'),
};

export const sensitivitySchema = z
  .strictObject({
    leftOut: z
      .array(
        z.strictObject({
          kind: z.enum(['category', 'tester', 'rig', 'entry']).describe('What is left out'),
          name: z.string().describe('Code, display name or slug of what is left out'),
          first: z.array(slug).describe('Variants in first place then'),
          swappedPairs: z.int().describe('Pairs of variants whose order turns round'),
          swaps: z.array(z.strictObject({ ahead: slug, behind: slug })).describe('The first of these pairs: who is then ahead of whom'),
          dropped: z.array(slug).describe('Variants that are then no longer placed'),
        }),
      )
      .describe('The overall order without each category, tester and rig, and without each entry that turns a pair round'),
    weights: z
      .strictObject({
        firstPlaces: z
          .array(z.strictObject({ variant: slug, percent: decimal }))
          .describe('Share of all weights, drawn evenly, under which a variant is first'),
        smallestChange: z
          .strictObject({ variant: slug, weightMovedPercent: decimal })
          .nullable()
          .describe('Smallest part of the weight that, moved to other categories, brings another variant to the first score'),
      })
      .nullable()
      .describe('What first place owes to the weights; null where the scheme knows none'),
  })
  .describe('What the overall order hangs on');

const countsSchema = z
  .strictObject({ entries: z.int(), submissions: z.int(), specimens: z.int(), testers: z.int(), rigs: z.int(), setAside: z.int() })
  .describe('Evidence behind it');

const amendmentsSchema = z
  .array(amendmentSchema)
  .optional()
  .describe('What it took besides while it was open, with the reason; none where it took nothing');

/**
 * The tables of what may be compared: of an edition with one division the edition itself (`documents/edition.json`), else one of its
 * divisions (`documents/divisions/{division}/edition.json`), with `division`, `takes` and `overruled`.
 */
export const editionDocumentSchema = z
  .strictObject({
    ...heading,
    takes: divisionRuleSchema.optional(),
    overruled: z
      .array(z.strictObject({ variant: slug, reason: z.string().describe('Why, in the words of the editor') }))
      .optional()
      .describe('Entries that an editor put into this division against the rule; none where there is one division'),
    previousEdition: slug.nullable(),
    scheme: z
      .strictObject({
        slug,
        name: z.string().describe('Name'),
        version: z.int().describe('Version'),
        words: z.string().describe('The scheme in words'),
        combine: z.enum(['sumOfPlaces', 'weightedSumOfPlaces', 'meanStandardScore', 'pairwiseWins']).describe('How places are combined'),
        countPlaces: z.enum(['beforeExclusions', 'afterExclusions']).describe('When category places are counted'),
        tieBreak: z.enum(['none', 'mostFirsts']).describe('Tie-break'),
        categories: z.array(categorySchema).describe('Categories in order'),
      })
      .describe('Scheme'),
    counts: countsSchema,
    overall: z.array(overallRowSchema).describe('Overall standings, best first'),
    incomplete: z
      .array(
        z.strictObject({
          variant: variantNameSchema,
          missing: z.array(slug).describe('Categories without a result that counts'),
          needs: z.array(z.string()).describe('What it lacks, in words'),
        }),
      )
      .describe('Entries not placed overall'),
    excluded: z.array(exclusionSchema).describe('Entries left out'),
    amendments: amendmentsSchema,
    categoryTops: z.array(z.strictObject({ category: slug, variants: z.array(variantNameSchema) })).describe('Top group of each category'),
    sensitivity: sensitivitySchema.nullable().describe('Null where an uncertainty is not known'),
    erratum: erratumSchema.nullable(),
  })
  .describe('An edition as published');

/** `documents/edition.json` of an edition with several divisions: what they are, and what holds for all. Their tables have documents of their own. */
export const editionOfDivisionsSchema = z
  .strictObject({
    ...heading,
    previousEdition: slug.nullable(),
    divisions: z
      .array(
        z.strictObject({
          slug,
          name: z.string().describe('Name of the division'),
          takes: divisionRuleSchema,
          variants: z.array(slug).describe('Its entries, placed or not, by slug'),
        }),
      )
      .min(2)
      .describe('Divisions in the order of the editor; places never run across them'),
    counts: countsSchema,
    amendments: amendmentsSchema,
    erratum: erratumSchema.nullable(),
  })
  .describe('An edition with several divisions, as published');

/** What lies at `documents/edition.json`: the tables of the one division, or the list of several. */
export const editionFileSchema = z.union([editionOfDivisionsSchema, editionDocumentSchema]);

export const categoryDocumentSchema = z
  .strictObject({
    ...heading,
    category: categorySchema,
    spread: z
      .strictObject({
        specimenPercent: decimal
          .nullable()
          .describe('What a specimen scatters by in general, coefficient of variation; null when too few tell'),
        betweenSubmissionsPercent: decimal.describe('What submissions of one variant differ by beyond that, relative standard deviation'),
        degreesOfFreedom: z.int().describe('Degrees of freedom of the latter'),
        specimensToTell: z.int().nullable().describe('Specimens of each of two variants that tell 3 % apart with a power of 80 %'),
      })
      .describe('How the readings of this category scatter'),
    rows: z.array(categoryRowSchema).describe('Standings, best first'),
  })
  .describe('The standings of one category');

export const withdrawnSchema = z
  .strictObject({
    reference: z.string().describe('Reference of the submission'),
    variant: slug,
    method: slug,
    tester: z.string().describe('Display name of the tester'),
    benchDay: date,
    withdrawnOn: date.describe('When it left the results'),
    reason: z.string().describe('Why'),
    citation: z.string().describe('How to cite that it was withdrawn'),
  })
  .describe('A result that was accepted and withdrawn: it counts for nothing, and is not forgotten');

export const withdrawnDocumentSchema = z
  .strictObject({ ...heading, items: z.array(withdrawnSchema).describe('By reference') })
  .describe('Results of the edition that were withdrawn');

export const recordsDocumentSchema = z
  .strictObject({
    ...heading,
    records: z
      .array(
        z.strictObject({
          category: slug,
          strengthFromN: z.int().describe('Class of measured breaking force, from this on [N]'),
          strengthBelowN: z.int().nullable().describe('And below this [N]; null without an end'),
          value: decimal.describe('Best value ever published'),
          unit: z.string().describe('SI unit'),
          variant: slug,
          edition: slug,
          equalled: z.array(z.strictObject({ variant: slug, edition: slug })).describe('Later results of the same printed value'),
          isNew: z.boolean().describe('Set in this edition'),
          since: slug.describe('First edition that compares: the method last changed beyond comparison before it'),
        }),
      )
      .describe('By category and class of strength'),
    runs: z
      .array(
        z.strictObject({
          table: slug.describe('"overall" or a category'),
          variant: slug,
          editions: z.array(slug).describe('Editions in a row in first place, oldest first'),
          isGoingOn: z.boolean().describe('Still there in this edition'),
        }),
      )
      .describe('Runs at the top, longest first in each table'),
  })
  .describe('What stands over the years, as known when this edition was published');

export const pairsDocumentSchema = z
  .strictObject({
    ...heading,
    variants: z.array(slug).describe('Placed variants, best first; empty where no chances are stated'),
    aheadPercent: z
      .array(z.array(z.int().min(0).max(100)))
      .describe('Chance that the variant of the row is ahead of that of the column overall, whole per cent; a shared place counts half'),
  })
  .describe('Chances of every pair under the model');

export const publishedReadingSchema = z
  .strictObject({
    role: z.string().describe('What was read'),
    station: z.int().nullable().describe('Station along the specimen'),
    entered: z.strictObject({ text: z.string().describe('As typed'), unit: z.string().describe('Unit as entered') }).describe('As entered'),
    value: decimal.describe('In SI, exact'),
    unit: z.string().describe('SI unit'),
  })
  .describe('One reading');

export const publishedSpecimenSchema = z
  .strictObject({
    number: z.int().describe('Number within the submission'),
    condition: z.enum(['untreated', 'treated']).describe('Whether knotted or abraded'),
    state: z.enum(['valid', 'invalid', 'setAside']).describe('Only valid specimens count'),
    reason: z.string().nullable().describe('Why it does not count'),
    readings: z.array(publishedReadingSchema).describe('Readings'),
    trace: traceSchema.optional(),
  })
  .describe('One specimen');

export const publishedSubmissionSchema = z
  .strictObject({
    reference: z.string().describe('Reference of the submission'),
    revision: z.int().describe('Revision that was accepted'),
    method: slug,
    methodVersion: z.int().describe('Version'),
    tester: z.string().describe('Display name of the tester'),
    reviewer: z.string().describe('Display name of the second person'),
    rig: z.string().describe('Code of the force or diameter instrument'),
    instruments: z
      .array(z.strictObject({ code: z.string(), calibration: z.string().nullable().describe('Certificate valid on the bench day') }))
      .describe('Instruments used'),
    spool: z.string().describe('Blind code'),
    benchDay: date,
    isBlind: z
      .boolean()
      .optional()
      .describe('False where its tester had seen the label or read what tells of the spool; not told in format 1'),
    figures: z.array(figureSchema).describe('Figures of this submission'),
    findings: z
      .array(
        z.strictObject({ code: z.string(), message: z.string(), resolution: z.string().nullable().describe('What the reviewer wrote') }),
      )
      .describe('What the checks found'),
    specimens: z.array(publishedSpecimenSchema).describe('Every specimen, counted or not'),
  })
  .describe('One accepted submission');

export const publishedClaimSchema = z
  .strictObject({
    quantity: z.enum(['breakingForce', 'diameter', 'linearDensity', 'peNumber']).describe('Claimed quantity'),
    basis: z.enum(['average', 'minimum', 'maximum', 'class', 'notStated']).describe('Basis'),
    printed: z.strictObject({ text: z.string(), unit: z.string() }).describe('As printed'),
    value: decimal.describe('In SI'),
    unit: z.string().describe('SI unit'),
    seenOn: date,
    source: z.string().describe('Where it was seen'),
    measured: figureSchema.nullable(),
    ratioPercent: decimal.nullable().describe('100 × measured / claimed'),
    decision: z
      .enum(['meets', 'probablyMeets', 'cannotSay', 'probablyFallsShort', 'fallsShort'])
      .nullable()
      .describe('Decision after JCGM 106'),
  })
  .describe('What the label says, beside what was measured');

export const historyPointSchema = z
  .strictObject({
    edition: slug,
    division: slug.optional().describe('Division that it was in; none where the edition had one'),
    revision: z.int(),
    overallPlace: z.int().nullable(),
    outcome: z.enum(['placed', 'incomplete', 'excluded']).describe('How the variant fared'),
    categories: z
      .array(
        z.strictObject({
          code: slug,
          place: z.int().nullable(),
          value: decimal,
          low: decimal.nullable(),
          high: decimal.nullable(),
          unit: z.string(),
          trade: tradeValueSchema.nullable(),
          methodVersion: z.int(),
          isBreak: z.boolean().describe('A method change breaks comparison with the point before'),
          isCorrected: z.boolean().optional().describe('An erratum of the edition changed the value; not told by the first releases'),
        }),
      )
      .describe('By category'),
  })
  .describe('One edition in the history of a variant');

export const variantDocumentSchema = z
  .strictObject({
    ...heading,
    variant: variantNameSchema,
    overruled: z.string().optional().describe('Why an editor put it into its division against the rule; none where the rule holds'),
    outcome: z.enum(['placed', 'incomplete', 'excluded']).describe('How the variant fared in this edition'),
    exclusion: exclusionSchema.omit({ variant: true }).nullable(),
    missing: z.array(slug).describe('Categories without an accepted result'),
    overall: overallRowSchema.omit({ variant: true }).nullable(),
    categories: z
      .array(z.strictObject({ category: categorySchema, row: categoryRowSchema.omit({ variant: true }) }))
      .describe('By category'),
    figures: z.array(figureSchema).describe('Every figure measured, ranked or not'),
    claims: z.array(publishedClaimSchema).describe('Claims'),
    evidence: z
      .array(z.strictObject({ quantity, submissions: z.array(z.string()).describe('References') }))
      .optional()
      .describe('Which submissions each figure was computed from'),
    submissions: z.array(publishedSubmissionSchema).describe('Accepted submissions'),
    withdrawn: z.array(withdrawnSchema).describe('Results that were withdrawn'),
    spools: z
      .array(
        z.strictObject({
          code: z.string(),
          source: z.enum(['bought', 'makerSupplied', 'lent']),
          obtainedOn: date,
          place: z.string(),
          lot: z.string().nullable(),
          reidentified: z.string().nullable(),
        }),
      )
      .describe('Spools tested and how they were obtained'),
    budgets: z
      .array(
        z.strictObject({
          category: slug,
          standardUncertaintyPercent: decimal.describe('Combined standard uncertainty, relative to the value'),
          degreesOfFreedom: z.int().nullable().describe('Effective degrees of freedom; null for more than a thousand'),
          lines: z
            .array(
              z.strictObject({
                component: z.enum(['repeatability', 'submission', 'tester', 'rig', 'certificate', 'spreads']),
                of: z.string().nullable().describe('Whose or which; null for repeatability'),
                sharePercent: decimal.describe('Share of the variance'),
              }),
            )
            .describe('Largest first'),
        }),
      )
      .describe('Uncertainty budget of each category (JCGM 100)'),
    history: z.array(historyPointSchema).describe('Editions, oldest first, this one last'),
    siblings: z.array(variantNameSchema).describe('Other variants of the line in this edition'),
  })
  .describe('One variant in one edition');

/** Format 2 only. */
const seriesSchema = z
  .discriminatedUnion('kind', [
    z.strictObject({
      code: slug,
      kind: z.literal('breakingForce'),
      treatment: z
        .strictObject({ kind: z.enum(['knot', 'abrasion']), name: z.string(), words: z.string() })
        .nullable()
        .describe('What a specimen goes through before it is pulled; null for nothing'),
    }),
    z.strictObject({ code: slug, kind: z.literal('diameterAlongStations'), stations: z.int().describe('Least number on each specimen') }),
    z.strictObject({ code: slug, kind: z.literal('linearDensity') }),
  ])
  .describe('One row of readings that a method yields');

export const methodDocumentSchema = z
  .strictObject({
    formatVersion,
    slug,
    name: z.string(),
    number: z.int(),
    effectiveFrom: date,
    effectiveUntil: date.nullable(),
    purpose: z.string(),
    apparatus: z.array(z.string()),
    steps: z.array(z.string()),
    series: z.array(seriesSchema).optional().describe('What the method yields; not told by format 1'),
    parameters: z.array(z.strictObject({ name: z.string(), value: z.string(), unit: z.string() })),
    formulae: z.array(z.strictObject({ figure: z.string(), formula: z.string(), where: z.string() })),
    limits: z.array(z.strictObject({ name: z.string(), value: z.string(), unit: z.string() })),
    checks: z.array(z.string()).describe('Codes of the checks applied'),
    checkSettings: z
      .array(
        z.strictObject({
          check: z.string(),
          severity: z.string().nullable(),
          limits: z.array(z.strictObject({ name: z.string(), value: z.number() })),
        }),
      )
      .optional()
      .describe('What this version sets of its checks'),
    cautions: z.array(z.string()),
    sources: z.array(z.string()),
    changes: z.string().describe('What changed against the version before'),
    isComparableWithPrevious: z.boolean(),
  })
  .describe('One immutable version of a method');

export const checkDocumentSchema = z
  .strictObject({
    code: z.string(),
    title: z.string(),
    severity: z.enum(['blocks', 'held', 'note']),
    explains: z.string(),
    limit: z.string(),
    severities: z
      .array(z.enum(['blocks', 'held', 'note']))
      .optional()
      .describe('Severities that a method version may give it'),
    limits: z
      .array(
        z.strictObject({
          name: z.string(),
          words: z.string(),
          value: decimal,
          unit: z.string(),
          atLeast: decimal.describe('A method version may set it from here'),
          atMost: decimal.describe('to here'),
        }),
      )
      .optional()
      .describe('Numbers that a method version may set'),
    source: z.string().optional().describe('Where rule and limits come from'),
    example: z.string().optional().describe('A submission that triggers it'),
  })
  .describe('One automatic check');

export const catalogueDocumentSchema = z
  .strictObject({
    ...heading,
    makers: z
      .array(
        z.strictObject({
          slug,
          name: z.string(),
          lines: z.array(
            z.strictObject({
              slug,
              name: z.string(),
              material: z.string(),
              construction: z.string(),
              carriers: z.int().nullable(),
              variants: z.array(variantNameSchema),
            }),
          ),
        }),
      )
      .describe('Makers, their lines and variants in this edition'),
    methods: z.array(z.strictObject({ slug, number: z.int() })).describe('Method versions in this release'),
    checks: z.array(checkDocumentSchema).describe('Checks pinned by this edition'),
  })
  .describe('Names in a release');

export const manifestSchema = z
  .strictObject({
    formatVersion,
    edition: slug,
    revision: z.int(),
    publishedAt: z.iso.datetime(),
    softwareVersion: z.string(),
    previousDigest: z.string().nullable().describe('SHA-256 of the manifest of the release before, the chain'),
    files: z
      .array(z.strictObject({ path: z.string(), mediaType: z.string(), sizeBytes: z.int(), sha256: z.string().regex(/^[0-9a-f]{64}$/) }))
      .describe('Every file with its digest'),
  })
  .describe('Manifest of a release; its SHA-256 is the digest of the release');

export const releaseSignatureSchema = z
  .strictObject({
    formatVersion: z.literal(1),
    algorithm: z.literal('Ed25519').describe('RFC 8032'),
    signed: z.literal('manifest.json').describe('File whose bytes are signed'),
    publicKey: z.string().describe('SubjectPublicKeyInfo (RFC 8410), DER, base64'),
    signature: z.string().describe('base64'),
  })
  .describe('Signature of a release');

export const signingKeySchema = z
  .strictObject({
    publicKey: z.string().describe('SubjectPublicKeyInfo (RFC 8410), DER, base64'),
    fingerprint: z.string().describe('SHA-256 of the key, hex'),
    firstUsedAt: z.iso.datetime().describe('Publication of the first release that it signed'),
  })
  .describe('A key that releases are signed with');

export const releaseSummarySchema = z
  .strictObject({
    edition: slug,
    editionName: z.string(),
    revision: z.int(),
    status: z.enum(['published', 'superseded']),
    digest: z.string().describe('SHA-256 of the manifest'),
    publishedAt: z.iso.datetime(),
    erratum: erratumSchema.nullable(),
  })
  .describe('A release in the list');

export type Figure = z.infer<typeof figureSchema>;
export type VariantName = z.infer<typeof variantNameSchema>;
export type Movement = z.infer<typeof movementSchema>;
export type OverallRow = z.infer<typeof overallRowSchema>;
export type CategoryRow = z.infer<typeof categoryRowSchema>;
export type Category = z.infer<typeof categorySchema>;
export type EditionDocument = z.infer<typeof editionDocumentSchema>;
export type EditionOfDivisions = z.infer<typeof editionOfDivisionsSchema>;
export type CategoryDocument = z.infer<typeof categoryDocumentSchema>;
export type VariantDocument = z.infer<typeof variantDocumentSchema>;
export type PublishedSubmission = z.infer<typeof publishedSubmissionSchema>;
export type PublishedSpecimen = z.infer<typeof publishedSpecimenSchema>;
export type PublishedClaim = z.infer<typeof publishedClaimSchema>;
export type HistoryPoint = z.infer<typeof historyPointSchema>;
export type PublishedSeries = z.infer<typeof seriesSchema>;
export type MethodDocument = z.infer<typeof methodDocumentSchema>;
export type CheckDocument = z.infer<typeof checkDocumentSchema>;
export type CatalogueDocument = z.infer<typeof catalogueDocumentSchema>;
export type Manifest = z.infer<typeof manifestSchema>;
export type Withdrawn = z.infer<typeof withdrawnSchema>;
export type PairsDocument = z.infer<typeof pairsDocumentSchema>;
export type RecordsDocument = z.infer<typeof recordsDocumentSchema>;
export type WithdrawnDocument = z.infer<typeof withdrawnDocumentSchema>;
export type ReleaseSignature = z.infer<typeof releaseSignatureSchema>;
export type SigningKeyResponse = z.infer<typeof signingKeySchema>;
export type ReleaseSummary = z.infer<typeof releaseSummarySchema>;
