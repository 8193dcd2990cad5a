import type { SubmissionResponse } from '../../../../api/contract/endpoints/submissions.js';

const SEVERITIES = { blocks: 'Cannot be handed in', held: 'A reviewer will look', note: 'Note' } as const;

/** What the checks found, the gravest first; each in the words that its reader may know. */
export function Findings({ findings, isTester = false }: { findings: SubmissionResponse['findings']; isTester?: boolean }) {
  if (findings.length === 0) return null;
  const order = Object.keys(SEVERITIES);
  const sorted = [...findings].sort((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity));
  return (
    <section aria-label="What the checks found">
      <ul class="rows">
        {sorted.map(({ code, severity, message, resolution }, i) => (
          <li key={`${code}-${i}`}>
            <p>
              <strong class={severity === 'note' ? '' : 'signal'}>{isTester ? SEVERITIES[severity] : severity}</strong>: {message}
              {resolution !== null && <span class="soft"> Answered: {resolution}</span>}
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}
