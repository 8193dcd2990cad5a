import { useState } from 'preact/hooks';
import { spoolsResponse } from '../../../../api/contract/endpoints/spools.js';
import { AddSpool } from '../catalogue/add-spool.js';
import { CatalogueRows } from '../catalogue/catalogue-rows.js';
import { PasteTable } from '../catalogue/paste-table.js';
import { Successors } from '../catalogue/successors.js';
import { correctionAt } from '../correct/correction-at.js';
import { allPages } from '../http/all-pages.js';
import { Loading } from '../parts/loading.js';
import { FoldedForm } from '../parts/folded-form.js';
import { useLoaded } from '../parts/use-loaded.js';
import { dayOf } from '../words/day-of.js';
import { SOURCE_WORDS } from '../words/kind-words.js';
import { loadCatalogue, variantNames } from '../parts/variant-names.js';

const AT_ONCE = 10;
const MORE = 50;

/** Maker, line, variant, claim and spool in one go; then the labels that testers see instead of all that. */
export function Catalogue() {
  const spools = useLoaded(() => allPages(spoolsResponse, 'catalogue/spools?limit=200'));
  const rows = useLoaded(loadCatalogue);
  const names = rows.answer ? variantNames(rows.answer) : null;
  const nameOf = (variant: string) => names?.get(variant) ?? '';
  const added = () => {
    spools.again();
    rows.again();
  };
  const [ticked, setTicked] = useState<readonly string[]>([]);
  const tick = (code: string, isTicked: boolean) => setTicked(isTicked ? [...ticked, code] : ticked.filter((one) => one !== code));
  const [sought, setSought] = useState('');
  const [shown, setShown] = useState(AT_ONCE);
  const found = (spools.answer ?? []).filter((spool) =>
    [spool.blindCode, nameOf(spool.variant), spool.place].some((text) => text.toLowerCase().includes(sought.trim().toLowerCase())),
  );
  const labels = `/v1/catalogue/labels?${ticked.map((code) => `code=${code}`).join('&')}`;
  return (
    <>
      <h1>Catalogue</h1>
      <h2>Add</h2>
      {spools.answer && (
        <FoldedForm what="One spool" count={spools.answer.length}>
          <AddSpool onAdded={added} known={rows.answer} />
        </FoldedForm>
      )}
      <PasteTable onAdded={added} />
      <CatalogueRows of={rows} />
      {rows.answer && rows.answer.makers.length > 0 && <Successors rows={rows.answer} />}
      <h2>Spools and their labels</h2>
      <p>Tick spools, print their labels, stick them over the makers’ own. Testers see the code alone.</p>
      <p class="acts">
        {ticked.length > 0 ? (
          <a class="key" href={labels} target="_blank" rel="noreferrer">
            Print {ticked.length} labels
          </a>
        ) : (
          <span class="soft">None is ticked.</span>
        )}
      </p>
      <Loading of={spools} />
      {spools.answer?.length === 0 && <p class="soft">There is no spool yet; the form above makes the first.</p>}
      {spools.answer && spools.answer.length > AT_ONCE && (
        <label class="field narrow">
          Only those whose code, variant or place has
          <input type="search" value={sought} onInput={(event) => setSought(event.currentTarget.value)} />
        </label>
      )}
      <ul class="rows">
        {found.slice(0, shown).map(({ blindCode, variant, source, obtainedOn, place }) => (
          <li key={blindCode}>
            <label class="tick">
              <input
                type="checkbox"
                checked={ticked.includes(blindCode)}
                onChange={(event) => tick(blindCode, event.currentTarget.checked)}
              />
              <span class="code">{blindCode}</span> {nameOf(variant)}
            </label>
            <span class="soft">
              {SOURCE_WORDS[source]}, {dayOf(obtainedOn)}, {place}{' '}
              <a href={correctionAt('spool', blindCode)}>
                correct<span class="only-heard"> the spool {blindCode}</span>
              </a>
            </span>
          </li>
        ))}
      </ul>
      {found.length > shown && (
        <button type="button" onClick={() => setShown(shown + MORE)}>
          More of {found.length}
        </button>
      )}
    </>
  );
}
