import type { LineResponse, MakerResponse, VariantResponse } from '../../../../api/contract/endpoints/catalogue.js';
import { correctionAt } from '../correct/correction-at.js';
import { isWide } from '../parts/is-wide.js';
import { Loading } from '../parts/loading.js';
import type { Loaded } from '../parts/use-loaded.js';
import { CLAIMED_WORDS, CONSTRUCTION_WORDS } from '../words/kind-words.js';
import type { CatalogueRows as Catalogue } from '../parts/variant-names.js';

/** Makers with their lines and variants; each name leads to where it is corrected or retired. */
export function CatalogueRows({ of }: { of: Loaded<Catalogue> }) {
  const { makers = [], lines = [], variants = [] } = of.answer ?? {};
  return (
    <>
      <h2>Makers, lines and variants</h2>
      <p>A name leads to where it is corrected or retired.</p>
      <Loading of={of} />
      {of.answer && makers.length === 0 && <p class="soft">None yet.</p>}
      <details open={isWide()} hidden={makers.length === 0}>
        <summary>
          {counted(makers.length, 'maker')}, {counted(lines.length, 'line')}, {counted(variants.length, 'variant')}
        </summary>
        {makers.map((maker) => (
          <details key={maker.slug}>
            <summary>
              {maker.name}
              <span class="soft">
                {' '}
                {counted(lines.filter((line) => line.maker === maker.slug).length, 'line')},{' '}
                {counted(variants.filter((variant) => variant.maker === maker.slug).length, 'variant')}
              </span>
            </summary>
            <p>
              <a href={correctionAt('maker', maker.slug)}>
                Correct the maker<span class="only-heard"> {maker.name}</span>
              </a>
              <Retired of={maker} />
            </p>
            {lines
              .filter((line) => line.maker === maker.slug)
              .map((line) => (
                <LineRows key={line.slug} line={line} variants={variants.filter((variant) => variant.line === line.slug)} />
              ))}
          </details>
        ))}
      </details>
    </>
  );
}

const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? '' : 's'}`;

function LineRows({ line, variants }: { line: LineResponse; variants: readonly VariantResponse[] }) {
  return (
    <>
      <p>
        <a href={correctionAt('line', line.slug)}>{line.name}</a>{' '}
        <span class="soft">
          {line.material}, {CONSTRUCTION_WORDS[line.construction]}
        </span>
        <Retired of={line} />
      </p>
      <ul class="rows">
        {variants.map((variant) => (
          <li key={variant.slug}>
            <p>
              <a href={correctionAt('variant', variant.slug)}>
                {variant.size}, {variant.colour}
              </a>
              <Retired of={variant} />
            </p>
            <span class="soft">
              {variant.claims.map(({ quantity, printed }) => `${CLAIMED_WORDS[quantity]} ${printed.text} ${printed.unit}`).join(', ') ||
                'the label says nothing'}
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}

const Retired = ({ of: { retired } }: { of: Pick<MakerResponse, 'retired'> }) =>
  retired === null ? null : <span class="signal"> retired</span>;
