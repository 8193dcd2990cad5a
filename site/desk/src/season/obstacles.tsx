import type { Obstacle } from '../../../../api/contract/obstacle.js';

/** Everything that stands in the way of the next step, each with what to do about it. */
export function Obstacles({ of }: { of: readonly Obstacle[] }) {
  if (of.length === 0) return null;
  return (
    <ul class="rows" aria-label="What stands in the way">
      {of.map(({ code, what, references, remedy }) => (
        <li key={code}>
          <p>
            <span class="signal">{what}</span>
            {references.length > 0 && `: ${references.join(', ')}`}
            <br />
            <span class="soft">{remedy}</span>
          </p>
        </li>
      ))}
    </ul>
  );
}
