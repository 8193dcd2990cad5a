import { useContext } from 'preact/hooks';
import type { Obstacle } from '../../../../api/contract/obstacle.js';
import { withoutRoutes } from '../words/without-routes.js';
import { inNames, NameOf } from '../parts/variant-names.js';

/** Named at once; further ones behind a press. */
const AT_ONCE = 5;
const IS_SUBMISSION = /^S-\d+-\d+$/;

/** Everything that stands in the way of the next step, each with what to do about it. */
export function Obstacles({ of }: { of: readonly Obstacle[] }) {
  const nameOf = useContext(NameOf);
  if (of.length === 0) return null;
  return (
    <ul class="rows" aria-label="What stands in the way">
      {of.map(({ code, what, references, remedy }) => (
        <li key={code}>
          <p>
            <span class="signal">{inNames(what, nameOf)}</span>
            <br />
            <span class="soft">{inNames(withoutRoutes(remedy), nameOf)}</span>
          </p>
          {references.length > 0 && <References of={references} />}
        </li>
      ))}
    </ul>
  );
}

function References({ of }: { of: readonly string[] }) {
  const further = of.slice(AT_ONCE);
  return (
    <div class="whole">
      <Some of={of.slice(0, AT_ONCE)} />
      {further.length > 0 && (
        <details>
          <summary>{further.length} more</summary>
          <Some of={further} />
        </details>
      )}
    </div>
  );
}

function Some({ of }: { of: readonly string[] }) {
  const nameOf = useContext(NameOf);
  return (
    <ul class="links">
      {of.map((reference) => (
        <li key={reference}>
          {IS_SUBMISSION.test(reference) ? (
            <a href={`/desk/review-one/?reference=${reference}`}>{reference}</a>
          ) : (
            inNames(reference, nameOf)
          )}
        </li>
      ))}
    </ul>
  );
}
