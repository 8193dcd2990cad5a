import type { ScreenProps } from '../frame/open-screen.js';
import { ControlCharts } from '../rigs/control-charts.js';
import { NewRoundRobin } from '../rigs/new-round-robin.js';
import { RoundRobin } from '../rigs/round-robin.js';
import { RoundRobins } from '../rigs/round-robins.js';

/** Whether rigs hold still, and how well testers agree. */
export function Rigs({ account }: ScreenProps) {
  const slug = new URLSearchParams(window.location.search).get('robin');
  if (slug !== null) return <RoundRobin slug={slug} account={account} />;
  const isWatching = account.roles.includes('reviewer') || account.roles.includes('editor');
  return (
    <>
      <h1>Agreement of rigs and testers</h1>
      {isWatching && <ControlCharts canStrike={account.roles.includes('reviewer')} />}
      <RoundRobins />
      {account.roles.includes('editor') && <NewRoundRobin />}
    </>
  );
}
