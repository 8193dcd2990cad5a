import { USUAL_CAUTIONS } from '../words/usual-cautions.js';

/** The usual cautions for work under load, then what the method adds to them. */
export function Cautions({ ofMethod = [] }: { ofMethod?: readonly string[] }) {
  return (
    <aside class="caution" aria-label="Before you pull">
      {[...new Set([...USUAL_CAUTIONS, ...ofMethod])].map((words) => (
        <p key={words}>{words}</p>
      ))}
    </aside>
  );
}
