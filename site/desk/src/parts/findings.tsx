import type { MethodVersion } from '../../../../api/contract/endpoints/methods.js';
import type { SubmissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import { FindingHelp } from './method-help.js';

const SEVERITIES = { blocks: 'Cannot be handed in', held: 'A reviewer will look', note: 'Note' } as const;

interface Props {
  readonly findings: SubmissionResponse['findings'];
  readonly method: Pick<MethodVersion, 'slug' | 'number'>;
}

/** What the checks found, for the tester, the gravest first; what follows from the method says why, and where it stands. */
export function Findings({ findings, method }: Props) {
  if (findings.length === 0) return null;
  const order = Object.keys(SEVERITIES);
  const sorted = [...findings].sort((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity));
  return (
    <section aria-label="What the checks found">
      <ul class="rows">
        {sorted.map(({ code, severity, message, resolution }, i) => (
          <li key={`${code}-${i}`}>
            <p>
              <strong class={severity === 'blocks' ? 'signal' : ''}>{SEVERITIES[severity]}</strong>: {message}
              {resolution !== null && <span class="soft"> Answered: {resolution}</span>}
              <FindingHelp code={code} method={method} />
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}
