import { useState } from 'preact/hooks';
import {
  proposalRequest,
  proposalResponse,
  proposalsResponse,
  type ProposalResponse,
} from '../../../../api/contract/endpoints/proposals.js';
import { spoolResponse } from '../../../../api/contract/endpoints/spools.js';
import { submissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import type { ScreenProps } from '../frame/open-screen.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { WithReason } from '../parts/with-reason.js';
import { dayOf } from '../words/day-of.js';
import { failureWords } from '../words/failure-words.js';

/** So many settled ones are in nobody's way. */
const FEW = 5;

/** What two persons do: one proposes, another carries it out. */
export function Proposals({ account }: ScreenProps) {
  const proposals = useLoaded(() => ask(proposalsResponse, 'GET', 'proposals'));
  const [said, setSaid] = useState('');
  const isEditor = account.roles.includes('editor');
  const carryOut = async (proposal: ProposalResponse) => {
    try {
      await (proposal.kind === 'withdrawal' ? withdraw(proposal) : reidentify(proposal));
      setSaid(`Carried out: ${inWords(proposal)}.`);
      proposals.again();
    } catch (error) {
      setSaid(failureWords(error));
    }
  };
  const end = async ({ id }: ProposalResponse, how: 'refusal' | 'cancellation', reason: string) => {
    await ask(proposalResponse, 'POST', `proposals/${id}/${how}`, { body: { reason } });
    proposals.again();
    return '';
  };
  const items = proposals.answer?.items ?? [];
  const settled = items.filter(({ state }) => state !== 'open');
  const row = (proposal: ProposalResponse) => (
    <li key={proposal.id}>
      <p>
        {inWords(proposal)}: {proposal.reason}
        <br />
        <span class="soft">
          {proposal.by}, {dayOf(proposal.at)}
        </span>
      </p>
      {proposal.state !== 'open' ? (
        <span>
          {ENDS[proposal.state]}
          {proposal.end && `: ${proposal.end.reason} (${proposal.end.by}, ${dayOf(proposal.end.at)})`}
        </span>
      ) : proposal.by === account.displayName ? (
        <div>
          <span class="soft">waits for another editor</span>
          <WithReason act={`Call off: ${inWords(proposal)}`} onSend={(reason) => end(proposal, 'cancellation', reason)} />
        </div>
      ) : isEditor ? (
        <div>
          <button type="button" onClick={() => void carryOut(proposal)}>
            Carry out: {inWords(proposal)}
          </button>
          <WithReason act={`Decline: ${inWords(proposal)}`} onSend={(reason) => end(proposal, 'refusal', reason)} />
        </div>
      ) : (
        <span class="soft">waits for an editor</span>
      )}
    </li>
  );
  return (
    <>
      <h1>Proposals</h1>
      <p>A withdrawal and a re-identification take two persons: one proposes, an editor who is somebody else carries it out.</p>
      <Loading of={proposals} />
      <p role="status">{said}</p>
      {proposals.answer?.items.length === 0 && <p class="soft">Nobody has proposed anything.</p>}
      <ul class="rows">{items.filter(({ state }) => state === 'open').map(row)}</ul>
      <h2>Propose a withdrawal</h2>
      <Form
        schema={proposalRequest}
        submit="Propose the withdrawal"
        isRepeated
        fixed={{ kind: 'withdrawal' }}
        fields={[
          { name: 'submission', label: 'Reference of the submission', hint: 'For instance S-2026-0007' },
          { name: 'reason', label: 'Why', kind: 'words' },
        ]}
        onSend={(request) => propose(request, proposals.again)}
      />
      <h2>Propose that a spool is another variant</h2>
      <Form
        schema={proposalRequest}
        submit="Propose the re-identification"
        isRepeated
        fixed={{ kind: 'reidentification' }}
        fields={[
          { name: 'spool', label: 'Code on the spool' },
          { name: 'variant', label: 'What it is: short name of the variant' },
          { name: 'reason', label: 'How it was found out', kind: 'words' },
        ]}
        onSend={(request) => propose(request, proposals.again)}
      />
      {settled.length > 0 && (
        <>
          <h2>Settled</h2>
          <details open={settled.length <= FEW}>
            <summary>{settled.length} proposals</summary>
            <ul class="rows">{settled.map(row)}</ul>
          </details>
        </>
      )}
    </>
  );
}

const ENDS = { carriedOut: 'carried out', declined: 'declined', calledOff: 'called off' } as const;

const inWords = ({ kind, object, variant }: ProposalResponse): string =>
  kind === 'withdrawal' ? `withdraw ${object}` : `spool ${object} is ${variant ?? ''}`;

async function propose(request: object, again: () => void): Promise<string> {
  const made = await ask(proposalResponse, 'POST', 'proposals', { body: request });
  again();
  return `Proposed: ${inWords(made)}. Another editor carries it out.`;
}

async function withdraw({ id, object }: ProposalResponse): Promise<void> {
  const { version } = await ask(submissionResponse, 'GET', `submissions/${object}`);
  await ask(submissionResponse, 'POST', `submissions/${object}/withdrawal`, { body: { proposal: id }, version });
}

async function reidentify({ id, object }: ProposalResponse): Promise<void> {
  const { version } = await ask(spoolResponse, 'GET', `catalogue/spools/${object}`);
  await ask(spoolResponse, 'POST', `catalogue/spools/${object}/reidentifications`, { body: { proposal: id }, version });
}
