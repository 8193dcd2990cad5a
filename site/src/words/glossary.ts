import { say } from './say.js';
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
    name: say`group`,
    words: say`Variants of one group are too close to call among themselves: the evidence does not tell any two of them apart.`,
    in: new RegExp(say`^Group$`),
  },
  {
    key: 'variant',
    name: say`variant`,
    words: say`A line in one size and one colour. It is what is bought, tested and placed.`,
    in: new RegExp(say`^Variant$`),
  },
  {
    key: 'apparent-stress',
    name: say`apparent stress`,
    words: say`Breaking force over the area of a circle of the measured diameter: how strong a line is for its thickness. Apparent, because a braid is not solid inside that circle.`,
    in: new RegExp(say`apparent (breaking )?stress`, 'i'),
  },
  {
    key: 'retention',
    name: say`retention`,
    words: say`What is left of the straight breaking force after a knot or after abrasion, in per cent of it.`,
    in: new RegExp(say`retention`, 'i'),
  },
  {
    key: 'honesty',
    name: say`strength honesty`,
    words: say`What was measured in per cent of what the label promises: at 100 the label says what the line does.`,
    in: new RegExp(say`honesty`, 'i'),
  },
  {
    key: 'interval',
    name: say`95 % interval`,
    words: say`Where the true value lies with 95 % confidence, given all that was measured. The wider, the less is known.`,
    in: new RegExp(say`95 % interval`),
  },
  {
    key: 'places-allowed',
    name: say`places the evidence allows`,
    words: say`Every place that the variant may truly have, with 95 % confidence for all variants of the table at once.`,
    in: new RegExp(say`^Places the evidence allows$`),
  },
  {
    key: 'pe',
    name: say`PE number`,
    words: say`A size class of braided lines that labels print: the higher, the thicker. It stands for a linear density, not for a strength.`,
    in: new RegExp(say`\\bPE( number| [\\d.]+|\\b)`),
  },
  {
    key: 'tex',
    name: say`linear density, tex`,
    words: say`Mass of a length of line: 1 tex is one gram a kilometre (ISO 1144). It tells how much material a line holds.`,
    in: new RegExp(say`linear density|\\btex\\b`, 'i'),
  },
  {
    key: 'carriers',
    name: say`carriers`,
    words: say`How many strands a line is braided of.`,
    in: new RegExp(say`carriers`, 'i'),
  },
  {
    key: 'uhmwpe',
    name: say`UHMWPE`,
    words: say`Polyethylene of ultra-high molecular weight: the fibre that braided and fused lines are made of.`,
    in: new RegExp(say`UHMWPE`),
  },
  {
    key: 'rig-effect',
    name: say`tester and rig, rig effect`,
    words: say`By how much another pair of hands and another rig shift a result. It is estimated from all that each of them measured.`,
    in: new RegExp(say`tester and rig|rig effect`, 'i'),
  },
  {
    key: 'degrees-of-freedom',
    name: say`degrees of freedom`,
    words: say`On how many independent differences a spread rests: the more, the better it is known.`,
    in: new RegExp(say`degrees of freedom`, 'i'),
  },
  {
    key: 'repeatability',
    name: say`repeatability`,
    words: say`By how much results of the same tester on the same rig scatter (ISO 5725-2).`,
    in: new RegExp(say`repeatability`, 'i'),
  },
  {
    key: 'reproducibility',
    name: say`reproducibility`,
    words: say`By how much results of different testers on different rigs scatter (ISO 5725-2).`,
    in: new RegExp(say`reproducibility`, 'i'),
  },
];

/** Terms of a text that a page has not explained before; it has from now on. */
export function newTerms(text: string, explained: Set<string>): Term[] {
  const found = GLOSSARY.filter((term) => term.in.test(text) && !explained.has(term.key));
  for (const { key } of found) explained.add(key);
  return found;
}
