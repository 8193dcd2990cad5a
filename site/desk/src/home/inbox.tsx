import { inboxResponse, type InboxItem } from '../../../../api/contract/endpoints/inbox.js';
import { ask } from '../http/ask.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';

const MOST = 8;

/** Where each thing that waits is done; by its reference where it has a page of its own. */
const PLACES: Readonly<Record<InboxItem['code'], (reference: string) => string>> = {
  queries_open: () => '/desk/submissions/',
  returned_to_you: (reference) => `/desk/enter/?draft=${reference}`,
  drafts: (reference) => `/desk/enter/?draft=${reference}`,
  assignments_open: () => '/desk/bench/',
  spools_to_pull: () => '/desk/bench/',
  round_robin_cells: (slug) => `/desk/rigs/?robin=${slug}`,
  reviews_waiting: (reference) => `/desk/review-one/?reference=${reference}`,
  doubts_open: (reference) => `/desk/review-one/?reference=${reference}`,
  returned_to_testers: (reference) => `/desk/review-one/?reference=${reference}`,
  proposals_open: () => '/desk/proposals/',
  openings_due: (slug) => `/desk/season/?edition=${slug}`,
  closings_due: (slug) => `/desk/season/?edition=${slug}`,
  releases_due: (slug) => `/desk/season/?edition=${slug}`,
  corrections_due: (slug) => `/desk/season/?edition=${slug}`,
  retests_open: () => '/desk/season/',
  certificates_ending: (code) => `/desk/correct/?kind=instrument&key=${code}`,
  invitations_open: () => '/desk/house/',
  webhooks_paused: () => '/desk/house/',
};

/** What waits for somebody, each leading to where it is done. */
export function Inbox() {
  const inbox = useLoaded(() => ask(inboxResponse, 'GET', 'inbox'));
  const items = inbox.answer?.items ?? [];
  return (
    <section aria-label="What waits for you">
      <Loading of={inbox} />
      {inbox.answer && items.length === 0 && <p class="soft">Nothing waits for you.</p>}
      {items.length > 0 && (
        <>
          <h2>What waits for you</h2>
          <ul class="rows">
            {items.map((item) => (
              <li key={item.code + item.role}>
                <p>
                  {item.what} <span class="soft">({item.count})</span>
                  <br />
                  {linksOf(item).map(([path, name], index) => (
                    <>
                      {index > 0 && ', '}
                      <a key={path} href={path}>
                        {name}
                      </a>
                    </>
                  ))}
                  {item.count > MOST && linksOf(item).length > 1 && <span class="soft"> and more</span>}
                </p>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

/** One link a reference where each has its own page, else one for all. */
function linksOf({ code, references }: InboxItem): [string, string][] {
  const paths = references.slice(0, MOST).map((reference): [string, string] => [PLACES[code](reference), reference]);
  const distinct = new Set(paths.map(([path]) => path));
  const [first] = paths;
  return distinct.size === 1 && paths.length > 1 && first ? [[first[0], 'Go there']] : paths;
}
