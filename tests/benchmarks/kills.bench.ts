/**
 * Kills servers in the middle of keyed hand-ins, and backups in the middle of their work: what the retry gets, what is doubled, what passes for a backup.
 * npm run bench -- kills [how many, 200]
 */
import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { checkBackup } from '../../api/platform/backup/check-backup.js';
import { contentFor, pulls, setUpBench } from '../support/bench.js';
import { end, startProgram, startServer } from '../support/programs.js';
import { listen, post } from '../support/races.js';
import { startTestServer } from '../support/test-server.js';

const half = Math.ceil(Number(process.argv[2] ?? 200) / 2);
/** Longer than an attempt that died holds its key. */
const LEASE_MS = 31_000;
/** The first hand-in of a new server takes some hundred. */
const LONGEST_HAND_IN_MS = 200;
/** With its start. */
const LONGEST_BACKUP_MS = 4000;
const server = await startTestServer();
process.env['TEST_SERVER_URL'] = server.url;
const b = await setUpBench();
const backups = await mkdtemp(join(tmpdir(), 'fairpull-killed-backups-'));
const handIns = { answeredFirst: 0, onRecord: 0, doneByRetry: 0, wrong: 0 };
const taken = { finished: 0, notFinished: 0, faults: 0 };
try {
  b.t.clock.time = new Date();
  const { token } = await b.t.caller(['tester']);
  const port = await listen(b);
  const recorded = async (): Promise<number> => Number((await b.sql('SELECT count(*) FROM submission'))[0]?.['count']);
  const before = await recorded();
  await Promise.all([killHandIns(port, token, recorded), killBackups()]);
  const added = (await recorded()) - before;
  console.log(
    `${half} servers killed within ${LONGEST_HAND_IN_MS} ms of a keyed hand-in: ${handIns.answeredFirst} had answered, ${handIns.onRecord} had put it on record, ${handIns.doneByRetry} were done by the retry; ${added} submissions on record, ${handIns.wrong} retries without the first answer or the work.`,
  );
  for (const name of await readdir(backups)) {
    if (name.endsWith('.part')) continue;
    taken.finished += 1;
    taken.faults += (await checkBackup(join(backups, name))).faults.length;
  }
  console.log(
    `${half} backups killed within ${LONGEST_BACKUP_MS} ms: ${taken.notFinished} killed before their end, ${taken.finished} folders that pass for a backup, ${taken.faults} faults in them.`,
  );
  process.exitCode = added === half && handIns.wrong === 0 && taken.faults === 0 ? 0 : 1;
} finally {
  await b.t.close();
  await server.stop();
  await rm(backups, { recursive: true, force: true });
}
process.exit();

async function killHandIns(port: number, token: string, recorded: () => Promise<number>): Promise<void> {
  for (let i = 0; i < half; i += 1) {
    const own = await startServer(b.t);
    const body = JSON.stringify(contentFor(b.spool, { specimens: pulls(60 + 0.37 * i, 5) }));
    const sending = { path: '/v1/submissions', token, headers: { 'Idempotency-Key': `killed-${i}` }, body };
    const already = await recorded();
    const first = post(own.port, sending).catch(() => null);
    await pause((LONGEST_HAND_IN_MS * i) / half);
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
  for (let i = 0; i < half; i += 1) {
    const child = startProgram(b.t, ['api/backup-command.ts', 'backup', backups]);
    await Promise.race([pause((LONGEST_BACKUP_MS * (i + 1)) / half), new Promise((resume) => child.once('exit', resume))]);
    if (child.exitCode === null) taken.notFinished += 1;
    await end(child, 'SIGKILL');
  }
}
