import { workingEditionsResponse } from '../../../../api/contract/endpoints/editions.js';
import { ask } from '../http/ask.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { EditionWork } from '../season/edition-work.js';
import { NewEdition } from '../season/new-edition.js';
import { dayOf } from '../words/day-of.js';

/** The editions of the house; one of them at its own address. */
export function Season() {
  const editions = useLoaded(() => ask(workingEditionsResponse, 'GET', 'bench/editions'));
  const items = [...(editions.answer?.items ?? [])].reverse();
  const slug = new URLSearchParams(window.location.search).get('edition');
  const edition = editions.answer?.items.find((one) => one.slug === slug);
  if (edition)
    return <EditionWork edition={edition} others={items.map((one) => one.slug).filter((one) => one !== slug)} onMoved={editions.again} />;
  return (
    <>
      <h1>Season</h1>
      <Loading of={editions} />
      {editions.answer && slug !== null && <p role="alert">No edition is called {slug}.</p>}
      {editions.answer && items.length === 0 && (
        <p class="lede">There is no edition yet. Make a scheme from the categories that you test, then plan the first edition.</p>
      )}
      <ul class="rows">
        {items.map((one) => (
          <li key={one.slug}>
            <p>
              <a href={`/desk/season/?edition=${one.slug}`}>{one.name}</a>
              <br />
              <span class="soft">
                {one.entries} entries, {dayOf(one.opensOn)} to {dayOf(one.closesOn)}
              </span>
            </p>
            <span>{one.state}</span>
          </li>
        ))}
      </ul>
      <NewEdition editions={items.map((one) => one.slug)} onPlanned={editions.again} />
    </>
  );
}
