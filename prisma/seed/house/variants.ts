import { demoLines, MIXED_UP, THREE_COLOURS } from './lines.js';
import type { DemoLine } from './lines.js';
import { demoMakers } from './makers.js';
import type { DemoMaker } from './makers.js';

/** A line in one size and colour. */
export interface DemoVariant {
  readonly slug: string;
  readonly line: DemoLine;
  readonly maker: DemoMaker;
  /** PE number of a braid, diameter of a strand [mm]. */
  readonly size: string;
  /** As on the label. */
  readonly label: string;
  readonly colour: string;
  readonly isFirstColour: boolean;
}

export const isStrand = (line: DemoLine): boolean => line.make === 'nylon' || line.make === 'fluorocarbon';

function variantOf(line: DemoLine, size: string, colour: string): DemoVariant {
  const maker = demoMakers.find(({ slug }) => slug === line.maker);
  if (!maker) throw new Error(`Line ${line.slug} names the maker ${line.maker}, who is not in the list of makers.`);
  const label = isStrand(line) ? `${size} mm` : `PE ${size}`;
  const colourMark = line.colours.length > 1 ? ` ${colour}` : '';
  const slug = `${line.name} ${isStrand(line) ? size : `pe ${size}`}${colourMark}`.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-');
  return { slug, line, maker, size, label, colour, isFirstColour: colour === line.colours[0] };
}

const lineCalled = (slug: string): DemoLine => {
  const line = demoLines.find((one) => one.slug === slug);
  if (!line) throw new Error(`No line is called ${slug}; expected one of ${demoLines.map((one) => one.slug).join(', ')}.`);
  return line;
};

/** First every line once, then what the story needs, then further sizes until there are enough. */
export function demoVariants(count: number): DemoVariant[] {
  const mixedUp = lineCalled(MIXED_UP);
  const inThreeColours = lineCalled(THREE_COLOURS);
  const all = [
    ...demoLines.map((line) => variantOf(line, line.sizes[0], line.colours[0])),
    variantOf(mixedUp, mixedUp.sizes[1], mixedUp.colours[0]),
    ...inThreeColours.colours.slice(1).map((colour) => variantOf(inThreeColours, inThreeColours.sizes[0], colour)),
    ...([1, 2] as const).flatMap((rank) => demoLines.map((line) => variantOf(line, line.sizes[rank], line.colours[0]))),
  ];
  const distinct = [...new Map(all.map((variant) => [variant.slug, variant])).values()];
  if (count < 24 || count > distinct.length) throw new Error(`The demo has 24 to ${distinct.length} variants; found ${count}.`);
  return distinct.slice(0, count);
}
