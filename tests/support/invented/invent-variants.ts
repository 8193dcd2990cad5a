import type { VariantName } from '../../../api/contract/documents/release-documents.js';
import { Draws } from './draws.js';

const MAKERS = [
  'Quaymarrow',
  'Bollarding Wharf',
  'Tidewick',
  'Harbrook Sael',
  'Skerrowen',
  'Mornhythe',
  'Pierholt',
  'Saltgarde',
  'Windroskel',
  'Cordwynne',
  'Haldermere',
  'Netherloft',
];
const FIRST = [
  'Brine',
  'Capst',
  'Dolph',
  'Ebbing',
  'Fender',
  'Gullen',
  'Hawsel',
  'Jettel',
  'Kelpen',
  'Lanter',
  'Moorel',
  'Nepper',
  'Ostrel',
  'Pilin',
  'Quoyn',
  'Ropew',
];
const SECOND = ['wickel', 'arrow', 'ovenna', 'ettle', 'mundel', 'iskar', 'olm', 'undra', 'eskel', 'avar', 'inster', 'ombre'];
const COLOURS = ['slate grey', 'moss green', 'buoy yellow'];
const SIZES = [
  { pe: '0.8', ratedLbf: '16', nylonMm: '0.20' },
  { pe: '1.0', ratedLbf: '20', nylonMm: '0.23' },
  { pe: '1.5', ratedLbf: '30', nylonMm: '0.28' },
  { pe: '2.0', ratedLbf: '40', nylonMm: '0.33' },
];
const MAKES = [
  { construction: 'braided', carriers: 8, material: 'UHMWPE' },
  { construction: 'braided', carriers: 4, material: 'UHMWPE' },
  { construction: 'fused', carriers: null, material: 'UHMWPE' },
  { construction: 'braided', carriers: 12, material: 'UHMWPE' },
  { construction: 'hollowCore', carriers: 16, material: 'UHMWPE' },
  { construction: 'monofilament', carriers: null, material: 'polyamide' },
] as const;
const VARIANTS_PER_LINE = 3;

const slugOf = (text: string) => text.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-');

/** One line: its variants share maker, material and construction; the third differs from the first by colour only. */
function inventLine(index: number, draws: Draws): VariantName[] {
  const maker = MAKERS[index % MAKERS.length] ?? '';
  const series = Math.floor(index / (FIRST.length * SECOND.length));
  const name = `${FIRST[index % FIRST.length]}${SECOND[Math.floor(index / FIRST.length + index) % SECOND.length]}${series > 0 ? ` ${series + 1}` : ''}`;
  const make = MAKES[index % MAKES.length] ?? MAKES[0];
  const start = Math.floor(draws.uniform() * SIZES.length);
  const isNylon = make.material === 'polyamide';
  return Array.from({ length: VARIANTS_PER_LINE }, (_, k) => {
    const size = SIZES[(start + (k === 1 ? 1 : 0)) % SIZES.length] ?? SIZES[0]!;
    const label = isNylon ? `${size.nylonMm} mm` : `PE ${size.pe}`;
    const colour = COLOURS[k === 2 ? (index + 1) % 3 : index % 3] ?? COLOURS[0]!;
    return {
      slug: slugOf(`${name} ${label} ${colour}`),
      maker: { slug: slugOf(maker), name: maker },
      line: { slug: slugOf(name), name },
      size: label,
      colour,
      material: make.material,
      construction: make.construction,
      carriers: make.carriers,
      peNumber: isNylon ? null : size.pe,
      ratedStrength: { value: size.ratedLbf, unit: 'lbf' },
    };
  });
}

/** Invented makers, lines and variants: the same first variants whatever the count. */
export function inventVariants(count: number): VariantName[] {
  const draws = new Draws(1871);
  const lines = Array.from({ length: Math.ceil(count / VARIANTS_PER_LINE) }, (_, index) => inventLine(index, draws));
  return lines.flat().slice(0, count);
}
