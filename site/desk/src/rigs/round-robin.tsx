import { useContext } from 'preact/hooks';
import type { z } from 'zod';
import { instrumentsResponse } from '../../../../api/contract/endpoints/instruments.js';
import { cellRequest, roundRobinResponse } from '../../../../api/contract/endpoints/round-robins.js';
import { RIG_KINDS } from '../../../../api/contract/instrument-kinds.js';
import { lastPull } from '../bench/last-pull.js';
import { readingsFrom } from '../bench/readings-from.js';
import type { Account } from '../frame/account.js';
import { allPages } from '../http/all-pages.js';
import { ask } from '../http/ask.js';
import { Cautions } from '../parts/cautions.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { AccountId } from '../parts/on-device.js';
import { useAct } from '../parts/use-act.js';
import { useLoaded } from '../parts/use-loaded.js';
import { useMethodNames } from '../parts/use-method-names.js';
import { RobinLevel } from './robin-level.js';

type Robin = z.infer<typeof roundRobinResponse>;

/** One round robin: its testers hand in, its editor opens and closes it, and then everybody who took part reads how they agree. */
export function RoundRobin({ slug, account }: { slug: string; account: Account }) {
  const robin = useLoaded(() => ask(roundRobinResponse, 'GET', `round-robins/${slug}`), [slug]);
  const { said, act } = useAct(robin.again);
  const nameOf = useMethodNames();
  if (!robin.answer)
    return (
      <>
        <h1>Round robin</h1>
        <Loading of={robin} />
      </>
    );
  const { state, version, yourNumber, names, report } = robin.answer;
  const move = (step: 'opening' | 'closure', words: string) =>
    act(() => ask(roundRobinResponse, 'POST', `round-robins/${slug}/${step}`, { version }), words);
  return (
    <>
      <h1>{report.name}</h1>
      <p>{report.words}</p>
      <p class="soft">
        {state}; {nameOf(report.method)}, {report.specimens} specimens of each spool by each of {report.testers} testers
        {yourNumber !== null && `; you are number ${yourNumber}`}
      </p>
      <p role="status">{said}</p>
      {account.roles.includes('editor') && state !== 'closed' && (
        <p class="acts">
          {state === 'planned' ? (
            <button type="button" class="main" onClick={() => move('opening', 'It is open; its testers hand in.')}>
              Open it
            </button>
          ) : (
            <button type="button" class="main" onClick={() => move('closure', 'It is closed; all who took part may read it.')}>
              Close it
            </button>
          )}
        </p>
      )}
      {state === 'open' && yourNumber !== null && <HandIn slug={slug} robin={robin.answer} onHandedIn={robin.again} />}
      {report.levels.map((level) => (
        <RobinLevel key={level.level} level={level} names={names} />
      ))}
      <p>
        <a href="/desk/rigs/">All round robins</a>
      </p>
    </>
  );
}

function HandIn({ slug, robin: { report, yourNumber }, onHandedIn }: { slug: string; robin: Robin; onHandedIn: () => void }) {
  const last = lastPull(useContext(AccountId));
  const rigs = useLoaded(async () => (await allPages(instrumentsResponse, 'instruments')).filter(({ kind }) => RIG_KINDS.includes(kind)));
  const open = report.levels.filter(({ cells }) => !cells.some(({ tester }) => tester === yourNumber));
  if (open.length === 0) return <p>You have handed in all of it.</p>;
  if (!rigs.answer) return <Loading of={rigs} />;
  return (
    <section>
      <h2>Hand in a spool</h2>
      <Cautions />
      <Form
        key={open.length}
        schema={cellRequest}
        submit="Hand it in"
        keptAs={`cell ${slug}`}
        fields={[
          { name: 'spool', label: 'Code on the spool', kind: 'choice', options: open.map(({ level }) => [level, level] as const) },
          {
            name: 'instrument',
            label: 'Rig',
            kind: 'choice',
            isStanding: true,
            value: last.instrument ?? '',
            options: rigs.answer.map(({ code, name }) => [code, `${code}, ${name}`] as const),
          },
          {
            name: 'unit',
            label: 'Displayed in',
            kind: 'choice',
            isStanding: true,
            value: last.unit ?? '',
            options: ['N', 'lbf', 'kgf'].map((unit) => [unit, unit] as const),
          },
          ...Array.from({ length: report.specimens }, (_, i) => ({
            name: `readings/${i}/text`,
            label: `Force, specimen ${i + 1}`,
            kind: 'reading' as const,
          })),
        ]}
        prepare={({ unit, readings, ...entered }) => ({
          ...entered,
          readings: readingsFrom(readings, String(unit)),
        })}
        onSend={async (request, key) => {
          await ask(roundRobinResponse, 'POST', `round-robins/${slug}/cells`, { body: request, key });
          onHandedIn();
          return 'Handed in; it stays as it is.';
        }}
      />
    </section>
  );
}
