/**
 * What happens in the four winters besides plain work. Each case is named here once; the tests look for each in the
 * data, and again in what the program publishes.
 */

/** A spool whose box names another size of the same line; found out after the release. */
export const MISLABELLED = {
  season: '2025',
  label: 'harrowknit-4-pe-1-2',
  contents: 'harrowknit-4-pe-1-5',
  letter: 'b',
  foundOn: '2025-04-17',
  reason:
    'Linear density of what is left on the spool is a quarter above that of the other spool of the same box, and equal to PE 1.5 of the same line. The shop confirmed that it filled boxes from loose spools.',
  words:
    'One of the two spools tested as Harrowknit 4 PE 1.2 was PE 1.5 of the same line in the wrong box. Its readings now count for PE 1.5, whose outline is thicker and whose rated strength is higher.',
} as const;

/** What the maker of the wrong box answered; it stands beside the figures from the second revision on. */
export const REPLY = {
  variant: MISLABELLED.label,
  signedBy: 'L. Farrant, for the makers of Harrowknit',
  words:
    'Boxes leave our works closed, one size each. This one was filled again in the shop. From this summer the size is printed on the spool too.',
} as const;

/** A spool sent by the maker beside one that was bought. */
export const SUPPLIED = { season: '2026', variant: 'gannetweave-8-pe-1-2', letter: 'b' } as const;

/** Left out, with the effect on the others. */
export const EXCLUSIONS = [
  {
    season: '2025',
    variant: 'squallrope-8-pe-1-0',
    reasonCode: 'labelInDoubt',
    effect: 'closedUp',
    words:
      'Two boxes of the same lot print different rated strengths. Until the maker says which one holds, there is no claim to hold it to.',
  },
  {
    season: '2026',
    variant: 'harrowknit-4-pe-2-0',
    reasonCode: 'notObtainable',
    effect: 'shownUnplaced',
    words:
      'This size went out of the shops in December, before the bench was done. Nobody who reads this can buy it, so it holds no place; its figures stay.',
  },
] as const;

/** A tester's tie to a maker. */
export const INTEREST = {
  season: '2025',
  tester: 3,
  maker: 'dunmarrick',
  words: 'My sister works in the dye house of Dunmarrick.',
} as const;

/** R3 read ever lower until its sensor was found loose; pulls of the last day before that were taken out and done again. */
export const DRIFT = {
  season: '2024',
  rig: 'R3',
  /** Bench day (counted from 0) → what the rig reads of the true force [1]. */
  readsByDay: { 7: 0.985, 8: 0.95 } as Readonly<Record<number, number>>,
  withdrawnDay: 8,
  repeatedDay: 9,
  foundOn: '2024-02-13',
  reason: 'R3 was found to read 5 % low at its calibration of 12 February: the sensor had come loose. Pulled again on the bench day after.',
} as const;

/** R2's certificate had run out on this bench day; the pulls were refused, and made again on R1. */
export const EXPIRED = { season: '2025', rig: 'R2', day: 7, instead: 'R1' } as const;

/** A variant that lacks one category. */
export const INCOMPLETE = { season: '2025', variant: 'saltwren-4-pe-1-5', method: 'palomar-knot' } as const;

/** Begun at the bench and not handed in yet, in the winter that is going on. */
export const DRAFT = {
  season: '2027',
  variant: 'northseam-8-pe-1-5',
  method: 'abrasion',
  tester: 0,
  note: 'Four pulled, two to go. The bar wants a fresh place before the next.',
} as const;

/** A turn slipped on the capstan for a moment; the record shows it, the display does not. */
export const SLIPPED = { key: '2026/gannetweave-8-pe-1-2/straight-pull/2', specimen: 4, atShare: 0.61 } as const;

/** All testers pulled the same three spools on one rig before the first bench day. */
export const ROUND_ROBIN = {
  season: '2026',
  slug: 'autumn-2025',
  name: 'Autumn round of 2025',
  words: 'One rig, one method, two braids and a strand: how far do our hands differ?',
  method: 'straight-pull',
  rig: 'R1',
  variants: ['kelpseam-8-pe-1-0-slate-grey', 'northseam-8-pe-1-5', 'plainmere-0-30'],
  specimens: 8,
} as const;

/** Results drawn by lot came back as spools of new codes the day before the edition closed. */
export const RETESTS = { season: '2026', percent: 4 } as const;

/** One pull of one variant that does not go the plain way. */
export type Twist =
  | { readonly kind: 'unitSlip'; readonly question: string; readonly answer: string }
  | { readonly kind: 'gripBreaks'; readonly specimens: readonly number[]; readonly words: string }
  | { readonly kind: 'outlier'; readonly specimen: number; readonly reads: number; readonly words: string }
  | { readonly kind: 'setAside'; readonly specimen: number; readonly reads: number; readonly note: string; readonly reason: string }
  | { readonly kind: 'seenLabel'; readonly note: string; readonly words: string }
  | { readonly kind: 'handedInTwice'; readonly note: string; readonly reason: string };

/** Season, variant, method and running number of the submission → what happens. */
export const TWISTS: Readonly<Record<string, Twist>> = {
  '2024/kelpseam-8-pe-1-0-slate-grey/straight-pull/2': {
    kind: 'unitSlip',
    question: 'Please look at the unit of these specimens beside the display of the rig.',
    answer: 'The gauge was set to kilograms-force and I wrote the column for pounds. The numbers are as displayed; the unit is put right.',
  },
  '2024/pierwhistle-4-pe-1-0/straight-pull/1': {
    kind: 'gripBreaks',
    specimens: [2, 5, 7],
    words:
      'Three parted within 5 mm of the upper capstan and do not count. The five that count parted in the free length, and the other rig agrees.',
  },
  '2024/tollstrand-12-pe-1-0/straight-pull/1': {
    kind: 'outlier',
    specimen: 6,
    reads: 0.8,
    words:
      'The specimen parted in the free length and nothing was seen on it. There is no reason but the number to leave it out, so it stays.',
  },
  '2024/northseam-8-pe-1-5/palomar-knot/1': {
    kind: 'setAside',
    specimen: 10,
    reads: 0.62,
    note: 'Specimen 10: the loop lay crossed when it was drawn down, seen only after the break.',
    reason: 'The note says that the knot was tied with a crossed loop, so it is not the knot that the method names.',
  },
  '2024/lanternweft-0-28/straight-pull/2': {
    kind: 'seenLabel',
    note: 'The paper of the spool came off in my hand and I read the label.',
    words:
      'The readings were on a display that the rig writes by itself, and another tester pulled the same spool blind with the same result.',
  },
  '2025/fellknot-fused-pe-0-8/straight-pull/2': {
    kind: 'handedInTwice',
    note: 'Sent again: the bench lost its line while the first went off.',
    reason: 'The same file was handed in twice; the first one stands.',
  },
  '2026/coldharl-8-pe-0-8/straight-pull/1': {
    kind: 'gripBreaks',
    specimens: [1, 3, 8],
    words: 'The fused tail was clamped too hard, says the note. Five specimens parted in the free length and agree with the other rig.',
  },
  '2026/plainmere-0-30/straight-pull/2': {
    kind: 'outlier',
    specimen: 3,
    reads: 0.87,
    words: 'No nick was found on either end under the glass. It stays; the interval is wider for it, as it should be.',
  },
};
