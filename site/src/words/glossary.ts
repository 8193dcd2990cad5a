/** A word of the trade or of statistics that a newcomer may not know. */
export interface Term {
  /** Part of an id. */
  readonly key: string;
  readonly name: string;
  readonly words: string;
  /** Where it stands in a text. */
  readonly in: RegExp;
}

/** In the order in which they are looked for; a text may hold several. */
const GLOSSARY: readonly Term[] = [
  {
    key: 'group',
    name: 'group',
    words: 'Variants of one group are too close to call among themselves: the evidence does not tell any two of them apart.',
    in: /^Group$/,
  },
  {
    key: 'variant',
    name: 'variant',
    words: 'A line in one size and one colour. It is what is bought, tested and placed.',
    in: /^Variant$/,
  },
  {
    key: 'apparent-stress',
    name: 'apparent stress',
    words:
      'Breaking force over the area of a circle of the measured diameter: how strong a line is for its thickness. Apparent, because a braid is not solid inside that circle.',
    in: /apparent (breaking )?stress/i,
  },
  {
    key: 'retention',
    name: 'retention',
    words: 'What is left of the straight breaking force after a knot or after abrasion, in per cent of it.',
    in: /retention/i,
  },
  {
    key: 'honesty',
    name: 'strength honesty',
    words: 'What was measured in per cent of what the label promises: at 100 the label says what the line does.',
    in: /honesty/i,
  },
  {
    key: 'interval',
    name: '95 % interval',
    words: 'Where the true value lies with 95 % confidence, given all that was measured. The wider, the less is known.',
    in: /95 % interval/,
  },
  {
    key: 'places-allowed',
    name: 'places the evidence allows',
    words: 'Every place that the variant may truly have, with 95 % confidence for all variants of the table at once.',
    in: /^Places the evidence allows$/,
  },
  {
    key: 'pe',
    name: 'PE number',
    words: 'A size class of braided lines that labels print: the higher, the thicker. It stands for a linear density, not for a strength.',
    in: /\bPE( number|\b)/,
  },
  {
    key: 'tex',
    name: 'linear density, tex',
    words: 'Mass of a length of line: 1 tex is one gram a kilometre (ISO 1144). It tells how much material a line holds.',
    in: /linear density|\btex\b/i,
  },
  {
    key: 'carriers',
    name: 'carriers',
    words: 'How many strands a line is braided of.',
    in: /carriers/i,
  },
  {
    key: 'uhmwpe',
    name: 'UHMWPE',
    words: 'Polyethylene of ultra-high molecular weight: the fibre that braided and fused lines are made of.',
    in: /UHMWPE/,
  },
  {
    key: 'rig-effect',
    name: 'tester and rig, rig effect',
    words: 'By how much another pair of hands and another rig shift a result. It is estimated from all that each of them measured.',
    in: /tester and rig|rig effect/i,
  },
  {
    key: 'degrees-of-freedom',
    name: 'degrees of freedom',
    words: 'On how many independent differences a spread rests: the more, the better it is known.',
    in: /degrees of freedom/i,
  },
  {
    key: 'repeatability',
    name: 'repeatability',
    words: 'By how much results of the same tester on the same rig scatter (ISO 5725-2).',
    in: /repeatability/i,
  },
  {
    key: 'reproducibility',
    name: 'reproducibility',
    words: 'By how much results of different testers on different rigs scatter (ISO 5725-2).',
    in: /reproducibility/i,
  },
];

/** Terms of a text that a page has not explained before; it has from now on. */
export function newTerms(text: string, explained: Set<string>): Term[] {
  const found = GLOSSARY.filter((term) => term.in.test(text) && !explained.has(term.key));
  for (const { key } of found) explained.add(key);
  return found;
}
