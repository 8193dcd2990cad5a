import { submissionResponse, type SubmissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import { ask } from '../http/ask.js';
import { WithReason } from '../parts/with-reason.js';

interface Props {
  readonly submission: SubmissionResponse;
  readonly onMoved: () => void;
}

/** What is left to do once it was decided: answer a doubt that came up later, or close one that will not come back. */
export function AfterDecision({ submission: { reference, version, state, findings }, onMoved }: Props) {
  const doubts =
    state === 'accepted'
      ? findings.filter(({ severity, resolution, id }) => severity === 'held' && resolution === null && id !== null)
      : [];
  const send = async (path: string, body: object) => {
    await ask(submissionResponse, 'POST', `submissions/${reference}/${path}`, { body, version });
    onMoved();
    return '';
  };
  return (
    <>
      {doubts.map(({ id, message }) => (
        <section key={id}>
          <h3>In doubt: {message}</h3>
          <WithReason
            act="Say why it stands all the same"
            keptAs={`doubt ${id ?? ''}`}
            label="Why it stands"
            onSend={(words) => send(`findings/${id ?? ''}/resolution`, { words })}
          />
          <p>
            Where it does not stand, <a href="/desk/proposals/">propose its withdrawal</a>.
          </p>
        </section>
      ))}
      {state === 'returned' && (
        <WithReason
          act="Close it: it will not come back"
          keptAs={`closure ${reference}`}
          label="Why it is closed without a further revision"
          onSend={(reason) => send('closure', { reason })}
        />
      )}
    </>
  );
}
