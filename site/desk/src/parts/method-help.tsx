import type { MethodVersion } from '../../../../api/contract/endpoints/methods.js';
import { askedOf, METHOD_OF_FINDING, methodAt } from '../words/method-help.js';

type Method = Pick<MethodVersion, 'slug' | 'name' | 'number' | 'limits' | 'series'>;

export const METHOD_HELP = 'method-help';

/** What the method asks of each field and figure, and why; each leads to the place where it stands. */
export function MethodHelp({ method }: { method: Method }) {
  return (
    <details id={METHOD_HELP}>
      <summary>What the method asks, and why</summary>
      <dl class="asked">
        {askedOf(method).map(({ part, what, limit, why }) => (
          <div key={part}>
            <dt>
              <a href={methodAt(method.slug, method.number, part)}>{what}</a>
            </dt>
            <dd>
              {limit}. <span class="soft">{why}</span>
            </dd>
          </div>
        ))}
      </dl>
    </details>
  );
}

/** Below a finding that follows from the method: why, and where the method says so. */
export function FindingHelp({ code, method }: { code: string; method: Pick<Method, 'slug' | 'number'> }) {
  const known = METHOD_OF_FINDING[code];
  if (!known) return null;
  return (
    <span class="soft">
      {' '}
      {known.why} <a href={methodAt(method.slug, method.number, known.part)}>What the method says</a>
    </span>
  );
}
