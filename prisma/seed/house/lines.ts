import type { MakerSlug } from './makers.js';

/** An invented line. Sizes are PE numbers of a braid, diameters in millimetres of a single strand. */
export interface DemoLine {
  readonly slug: string;
  readonly maker: MakerSlug;
  readonly name: string;
  readonly make: Make;
  readonly sizes: readonly [string, string, string];
  readonly colours: readonly [string, ...string[]];
}

export type Make = 'braid4' | 'braid8' | 'braid12' | 'hollow16' | 'fused' | 'nylon' | 'fluorocarbon';

const line = (maker: MakerSlug, name: string, make: Make, sizes: DemoLine['sizes'], ...colours: [string, ...string[]]): DemoLine => ({
  slug: name.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-'),
  maker,
  name,
  make,
  sizes,
  colours,
});

/** The line that is entered in three colours. */
export const THREE_COLOURS = 'kelpseam-8';

/** The line of which one size was sold in the box of another. */
export const MIXED_UP = 'harrowknit-4';

/** Twenty lines; no line of the trade bears one of these names. */
export const demoLines: readonly DemoLine[] = [
  line('ottervane', 'Kelpseam 8', 'braid8', ['1.0', '1.5', '0.8'], 'slate grey', 'moss green', 'buoy yellow'),
  line('brackholm-cordage', 'Harrowknit 4', 'braid4', ['1.2', '1.5', '2.0'], 'moss green'),
  line('selwyck-daughters', 'Lanternweft', 'nylon', ['0.28', '0.25', '0.33'], 'clear'),
  line('marrowfleet', 'Squallrope 8', 'braid8', ['1.0', '2.0', '1.2'], 'buoy yellow'),
  line('tarnequay', 'Tollstrand 12', 'braid12', ['1.0', '1.2', '1.5'], 'slate grey'),
  line('ilverness', 'Fellknot Fused', 'fused', ['0.8', '1.0', '1.2'], 'smoke'),
  line('dunmarrick', 'Duskwater F', 'fluorocarbon', ['0.26', '0.29', '0.33'], 'clear'),
  line('hythelow', 'Pierwhistle 4', 'braid4', ['1.0', '1.5', '0.8'], 'moss green'),
  line('pellandor', 'Gannetweave 8', 'braid8', ['1.2', '1.0', '1.5'], 'white'),
  line('quillhaven', 'Ebbhollow 16', 'hollow16', ['2.0', '2.5', '3.0'], 'white'),
  line('vossing-tide', 'Northseam 8', 'braid8', ['1.5', '1.0', '2.0'], 'slate grey'),
  line('ebbsworth-twine', 'Plainmere', 'nylon', ['0.30', '0.25', '0.35'], 'smoke'),
  line('tarnequay', 'Quietbight F', 'fluorocarbon', ['0.29', '0.26', '0.31'], 'clear'),
  line('brackholm-cordage', 'Skerrygrip 12', 'braid12', ['1.5', '1.0', '2.0'], 'smoke'),
  line('ilverness', 'Coldharl 8', 'braid8', ['0.8', '1.2', '1.0'], 'buoy yellow'),
  line('dunmarrick', 'Marshbell', 'nylon', ['0.25', '0.30', '0.28'], 'moss green'),
  line('pellandor', 'Saltwren 4', 'braid4', ['1.5', '1.2', '1.0'], 'slate grey'),
  line('selwyck-daughters', 'Glasswade F', 'fluorocarbon', ['0.31', '0.26', '0.29'], 'clear'),
  line('vossing-tide', 'Emberfuse', 'fused', ['1.0', '1.2', '1.5'], 'smoke'),
  line('ebbsworth-twine', 'Tidelace 8', 'braid8', ['1.2', '0.8', '1.5'], 'white'),
];
