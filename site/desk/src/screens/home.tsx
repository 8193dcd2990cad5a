import type { ScreenProps } from '../frame/open-screen.js';
import { Inbox } from '../home/inbox.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { stepsFor } from '../words/steps-for.js';

/** What is done and what is next, for each role that somebody has. */
export function Home({ account }: ScreenProps) {
  const steps = useLoaded(() => stepsFor(account));
  const next = steps.answer?.find(({ isDone }) => !isDone);
  return (
    <>
      <h1>{account.displayName}</h1>
      {account.roles.length === 0 && <p class="lede">You have no role yet. An admin of the house gives roles.</p>}
      {next && (
        <p class="lede">
          Next: <a href={next.path}>{next.words}</a>
        </p>
      )}
      <Inbox />
      <h2>The way of the work</h2>
      <Loading of={steps} />
      <ol class="steps">
        {steps.answer?.map((step) => (
          <li key={step.words} class={step === next ? 'next' : ''}>
            <span>{step.isDone ? 'done' : step === next ? 'next' : 'later'}</span>
            <span>
              <a href={step.path}>{step.words}</a> <span class="soft">{step.told}</span>
            </span>
          </li>
        ))}
      </ol>
    </>
  );
}
