/**
 * Kills servers in the middle of keyed hand-ins, and backups in the middle of their work: what the retry gets, what is doubled, what passes for a backup.
 * npm run bench -- kills [servers, 200] [backups, 100]
 */
import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import pg from 'pg';
import { checkBackup } from '../../api/platform/backup/check-backup.js';
import { contentFor, pulls, setUpBench } from '../support/bench.js';
import { end, startProgram, startServer } from '../support/programs.js';
import { listen, post } from '../support/races.js';
import { startTestServer } from '../support/test-server.js';

const [servers = 200, backupsKilled = 100] = process.argv.slice(2).map(Number);
/** Longer than an attempt that died holds its key. */
const LEASE_MS = 31_000;
/** Hand-ins that a new server does before the one that it dies in: the first take several times as long. */
const WARM_UP = 5;
/** Of a hand-in's own time: also killed when its answer should be on its way. */
const LONGEST = 1.2;
/** With its start. */
const LONGEST_BACKUP_MS = 4000;
const server = await startTestServer();
process.env['TEST_SERVER_URL'] = server.url;
const b = await setUpBench();
const watching = new pg.Client({ connectionString: b.t.databaseUrl });
const backups = await mkdtemp(join(tmpdir(), 'fairpull-killed-backups-'));
const handIns = { answeredFirst: 0, onRecord: 0, doneByRetry: 0, wrong: 0 };
let warmedUp = 0;
const taken = { finished: 0, notFinished: 0, faults: 0 };
try {
  b.t.clock.time = new Date();
  const { token } = await b.t.caller(['tester']);
  const port = await listen(b);
  // A connection that stands sees the record before the answer is on its way.
  await watching.connect();
  const recorded = async (): Promise<number> =>
    Number((await watching.query<{ n: string }>('SELECT count(*) AS n FROM submission')).rows[0]?.n);
  const before = await recorded();
  await Promise.all([killHandIns(port, token, recorded), killBackups()]);
  const added = (await recorded()) - before - warmedUp;
  console.log(
    `${servers} servers killed during a keyed hand-in, every second one as soon as it was on record: ${handIns.answeredFirst} had answered, ${handIns.onRecord} had put it on record, ${handIns.doneByRetry} were done by the retry; ${added} submissions on record, ${handIns.wrong} retries without the first answer or the work.`,
  );
  for (const name of await readdir(backups)) {
    if (name.endsWith('.part')) continue;
    taken.finished += 1;
    taken.faults += (await checkBackup(join(backups, name))).faults.length;
  }
  console.log(
    `${backupsKilled} backups killed within ${LONGEST_BACKUP_MS} ms: ${taken.notFinished} killed before their end, ${taken.finished} folders that pass for a backup, ${taken.faults} faults in them.`,
  );
  process.exitCode = added === servers && handIns.wrong === 0 && taken.faults === 0 ? 0 : 1;
} finally {
  await watching.end();
  await b.t.close();
  await server.stop();
  await rm(backups, { recursive: true, force: true });
}
process.exit();

/** Every second one is killed at some moment of the hand-in, the others as soon as it is on record: its answer may not be on its way then. */
async function killHandIns(port: number, token: string, recorded: () => Promise<number>): Promise<void> {
  for (let i = 0; i < servers; i += 1) {
    const own = await startServer(b.t);
    const handInAs = (force: number, key: string, specimens = 5) => ({
      path: '/v1/submissions',
      token,
      headers: { 'Idempotency-Key': key },
      body: JSON.stringify(contentFor(b.spool, { specimens: pulls(force, specimens) })),
    });
    let took = 0;
    for (let first = 0; first < WARM_UP; first += 1) {
      const began = performance.now();
      const answer = await post(own.port, handInAs(60 + 0.01 * (WARM_UP * i + first), `warm-up-${i}-${first}`, 6));
      if (answer?.status !== 201) throw new Error(`A hand-in before the kill was not done: ${answer?.text ?? 'no answer'}`);
      took = performance.now() - began;
    }
    warmedUp += WARM_UP;
    const sending = handInAs(60 + 0.37 * i, `killed-${i}`);
    const already = await recorded();
    const first = post(own.port, sending).catch(() => null);
    if (i % 2 === 0) await pause((took * LONGEST * i) / servers);
    else while ((await recorded()) === already);
    own.child.kill('SIGKILL');
    await end(own.child, 'SIGKILL');
    const answer = await first;
    const wasOnRecord = (await recorded()) > already;
    b.t.clock.time = new Date(Date.now() + LEASE_MS);
    const [retry, again] = [await post(port, sending), await post(port, sending)];
    if (answer) handIns.answeredFirst += 1;
    else if (wasOnRecord) handIns.onRecord += 1;
    else handIns.doneByRetry += 1;
    const isSame = retry?.status === 201 && retry.text === again?.text && (answer === null || answer.text === retry.text);
    if (!isSame || (await recorded()) !== already + 1) handIns.wrong += 1;
  }
}

async function killBackups(): Promise<void> {
  for (let i = 0; i < backupsKilled; i += 1) {
    const child = startProgram(b.t, ['api/backup-command.ts', 'backup', backups]);
    await Promise.race([pause((LONGEST_BACKUP_MS * (i + 1)) / backupsKilled), new Promise((resume) => child.once('exit', resume))]);
    if (child.exitCode === null) taken.notFinished += 1;
    await end(child, 'SIGKILL');
  }
}
