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
import { loadCatalogue, variantNames } from '../parts/variant-names.js';
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
  const names = useLoaded(async () => variantNames(await loadCatalogue()));
  const nameOf = (slug: string) => names.answer?.get(slug) ?? '';
  const [said, setSaid] = useState('');
  const isEditor = account.roles.includes('editor');
  const carryOut = async (proposal: ProposalResponse) => {
    try {
      await (proposal.kind === 'withdrawal' ? withdraw(proposal) : reidentify(proposal));
      setSaid(`Carried out: ${inWords(proposal, nameOf)}.`);
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
        {inWords(proposal, nameOf)}: {proposal.reason}
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
          <WithReason
            act={`Call off: ${inWords(proposal, nameOf)}`}
            keptAs={`call-off ${proposal.id}`}
            onSend={(reason) => end(proposal, 'cancellation', reason)}
          />
        </div>
      ) : isEditor ? (
        <div>
          <button type="button" onClick={() => void carryOut(proposal)}>
            Carry out: {inWords(proposal, nameOf)}
          </button>
          <WithReason
            act={`Decline: ${inWords(proposal, nameOf)}`}
            keptAs={`decline ${proposal.id}`}
            onSend={(reason) => end(proposal, 'refusal', reason)}
          />
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
        keptAs="withdrawal"
        isRepeated
        fixed={{ kind: 'withdrawal' }}
        fields={[
          { name: 'submission', label: 'Reference of the submission', hint: 'For instance S-2026-0007' },
          { name: 'reason', label: 'Why', kind: 'words' },
        ]}
        onSend={(request) => propose(request, nameOf, proposals.again)}
      />
      <h2>Propose that a spool is another variant</h2>
      <Form
        schema={proposalRequest}
        submit="Propose the re-identification"
        keptAs="reidentification"
        isRepeated
        fixed={{ kind: 'reidentification' }}
        fields={[
          { name: 'spool', label: 'Code on the spool' },
          { name: 'variant', label: 'What it is', kind: 'choice', options: [...(names.answer ?? [])] },
          { name: 'reason', label: 'How it was found out', kind: 'words' },
        ]}
        onSend={(request) => propose(request, nameOf, proposals.again)}
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

const inWords = ({ kind, object, variant }: ProposalResponse, nameOf: (slug: string) => string): string =>
  kind === 'withdrawal' ? `withdraw ${object}` : `spool ${object} is ${nameOf(variant ?? '')}`;

async function propose(request: object, nameOf: (slug: string) => string, again: () => void): Promise<string> {
  const made = await ask(proposalResponse, 'POST', 'proposals', { body: request });
  again();
  return `Proposed: ${inWords(made, nameOf)}. Another editor carries it out.`;
}

async function withdraw({ id, object }: ProposalResponse): Promise<void> {
  const { version } = await ask(submissionResponse, 'GET', `submissions/${object}`);
  await ask(submissionResponse, 'POST', `submissions/${object}/withdrawal`, { body: { proposal: id }, version });
}

async function reidentify({ id, object }: ProposalResponse): Promise<void> {
  const { version } = await ask(spoolResponse, 'GET', `catalogue/spools/${object}`);
  await ask(spoolResponse, 'POST', `catalogue/spools/${object}/reidentifications`, { body: { proposal: id }, version });
}
