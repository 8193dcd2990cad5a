import { useState } from 'preact/hooks';
import { z } from 'zod';
import {
  newWebhookResponse,
  webhookDeliveriesResponse,
  webhookRequest,
  webhookSchema,
  webhooksResponse,
} from '../../../../api/contract/endpoints/webhooks.js';
import type { WebhookDelivery, WebhookResponse } from '../../../../api/contract/endpoints/webhooks.js';
import { CHANGE_KINDS } from '../../../../api/contract/documents/changes.js';
import { ask } from '../http/ask.js';
import { Folded } from '../parts/folded.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { ShownOnce } from '../parts/shown-once.js';
import { useAct } from '../parts/use-act.js';
import { useLoaded } from '../parts/use-loaded.js';
import { WithReason } from '../parts/with-reason.js';
import { actWords } from '../words/act-words.js';
import { dayOf, timeOf } from '../words/day-of.js';

const momentOf = (moment: string): string => `${dayOf(moment)}, ${timeOf(new Date(moment))}`;

/** Integrators that are told of changes: whether they heard, and what was tried. */
export function Webhooks() {
  const hooks = useLoaded(() => ask(webhooksResponse, 'GET', 'webhooks'));
  const [secret, setSecret] = useState('');
  const { said, act } = useAct(hooks.again);
  return (
    <Folded heading="Deliveries to integrators" told={hooks.answer ? String(hooks.answer.items.length) : ''}>
      <Loading of={hooks} />
      {hooks.answer?.items.length === 0 && <p class="soft">Nobody is told of changes yet.</p>}
      <p role="status">{said}</p>
      <ul class="rows">
        {hooks.answer?.items.map((hook) => (
          <li key={hook.id}>
            <p>
              {hook.note}
              <br />
              <span class="soft">
                {hook.address}, told up to change {hook.toldUpTo}
              </span>
            </p>
            <span>
              <State {...hook} />
            </span>
            <details class="whole">
              <summary>
                What was tried, pause, end<span class="only-heard">: {hook.note}</span>
              </summary>
              <Tried id={hook.id} onAgain={hooks.again} />
              {hook.pausedAt === null ? (
                <WithReason
                  act={`Pause what goes to ${hook.note}`}
                  keptAs={`pause ${hook.id}`}
                  onSend={async (reason) => {
                    await ask(webhookSchema, 'POST', `webhooks/${hook.id}/pause`, { body: { reason } });
                    hooks.again();
                    return 'It is told nothing until you let it go on.';
                  }}
                />
              ) : (
                <button
                  type="button"
                  onClick={() =>
                    act(() => ask(z.unknown(), 'DELETE', `webhooks/${hook.id}/pause`), 'It is told again, with what it missed.')
                  }
                >
                  Let it go on
                </button>
              )}
              <details>
                <summary>End what goes to {hook.note}</summary>
                <p>It is told nothing any more, and what was tried is forgotten.</p>
                <button
                  type="button"
                  onClick={() => act(() => ask(z.null(), 'DELETE', `webhooks/${hook.id}`), `${hook.note} is told nothing any more.`)}
                >
                  Yes, end it
                </button>
              </details>
            </details>
          </li>
        ))}
      </ul>
      {secret !== '' && <ShownOnce secret={secret} words="Give this to whoever runs the address: its signatures are checked with it." />}
      <details>
        <summary>Tell a further address</summary>
        <Form
          schema={webhookRequest}
          submit="Tell it from now on"
          keptAs="webhook"
          isRepeated
          fields={[
            { name: 'address', label: 'Address, https' },
            { name: 'note', label: 'Whose it is and what for' },
            {
              name: 'kinds',
              label: 'Of what',
              kind: 'several',
              options: CHANGE_KINDS.map((kind) => [kind, actWords(kind)] as const),
              ticked: CHANGE_KINDS,
            },
          ]}
          onSend={async (request) => {
            const made = await ask(newWebhookResponse, 'POST', 'webhooks', { body: request });
            setSecret(made.secret);
            hooks.again();
            return 'It is told of every change from now on.';
          }}
        />
      </details>
    </Folded>
  );
}

function State({ pausedAt, pausedBecause, failures, failingSince }: WebhookResponse) {
  if (pausedAt !== null)
    return (
      <span class="signal">
        paused since {momentOf(pausedAt)}: {pausedBecause}
      </span>
    );
  if (failingSince !== null)
    return (
      <span class="signal">
        {failures} attempts failed since {momentOf(failingSince)}
      </span>
    );
  return <>hears</>;
}

/** What was tried, from each of which on it can be told again. @param onAgain called when that was asked for */
function Tried({ id, onAgain }: { id: string; onAgain: () => void }) {
  const [deliveries, setDeliveries] = useState<readonly WebhookDelivery[] | null>(null);
  const { said, act } = useAct(() => undefined);
  const tellAgain = async (change: number) => {
    await ask(webhookSchema, 'POST', `webhooks/${id}/replays`, { body: { after: change - 1 } });
    onAgain();
  };
  const look = async () => setDeliveries((await ask(webhookDeliveriesResponse, 'GET', `webhooks/${id}/deliveries?limit=20`)).items);
  return (
    <>
      <p class="acts">
        <button type="button" onClick={() => act(look, '')}>
          The last attempts
        </button>
      </p>
      <p role="status">{deliveries?.length === 0 ? 'Nothing was tried yet.' : said}</p>
      <ul class="rows">
        {deliveries?.map(({ id: attempt, change, kind, at, isDelivered, words }) => (
          <li key={attempt}>
            <p>
              Change {change}, {actWords(kind)}: <span class={isDelivered ? '' : 'signal'}>{words}</span>
            </p>
            <span class="soft">{momentOf(at)}</span>
            <button type="button" onClick={() => act(() => tellAgain(change), `It is told again, from change ${change} on.`)}>
              Tell again from here<span class="only-heard">, change {change}</span>
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
