/** What it costs to keep a copy of everything that a house publishes. */

export interface Cost {
  readonly requests: number;
  readonly bytes: number;
}

interface Release {
  readonly edition: string;
  readonly revision: number;
}

/** Counts what it fetches, by the coding that a mirror asks for. */
class Counter {
  requests = 0;
  bytes = 0;

  constructor(private readonly house: string) {}

  async read(path: string): Promise<Buffer> {
    const answer = await fetch(this.house + path);
    if (!answer.ok) throw new Error(`${path} was answered by ${answer.status}`);
    const bytes = Buffer.from(await answer.arrayBuffer());
    this.requests += 1;
    this.bytes += Number(answer.headers.get('content-length') ?? bytes.length);
    return bytes;
  }

  get cost(): Cost {
    return { requests: this.requests, bytes: this.bytes };
  }
}

/** As it had to be done without archives: every file of every release for itself. */
export async function mirrorByFile(house: string): Promise<Cost> {
  const counter = new Counter(house);
  for (const release of await releasesIn(counter)) await readFiles(counter, release);
  return counter.cost;
}

async function readFiles(counter: Counter, { edition, revision }: Release): Promise<void> {
  const at = `/v1/releases/${edition}/${revision}`;
  const manifest = JSON.parse((await counter.read(`${at}/manifest.json`)).toString()) as { files: { path: string }[] };
  await counter.read(`${at}/signature.json`);
  for (const { path } of manifest.files) if (path !== 'release.zip') await counter.read(`${at}/${path}`);
}

/** The list and three files a release. */
export async function mirrorByArchive(house: string): Promise<Cost> {
  const counter = new Counter(house);
  for (const release of await releasesIn(counter)) await readArchive(counter, release);
  return counter.cost;
}

async function readArchive(counter: Counter, { edition, revision }: Release): Promise<void> {
  for (const name of ['manifest.json', 'signature.json', 'release.zip']) await counter.read(`/v1/releases/${edition}/${revision}/${name}`);
}

const DAYS = 365;

/** How one learns every day for a year whether something was published, and what that costs besides what was. */
export interface YearCosts {
  /** The whole list each day, then every file of the erratum for itself: all there was before. */
  readonly byList: Cost;
  /** What changed since, then three files. */
  readonly byChanges: Cost;
  /** One event comes; then three files. */
  readonly byWebhook: Cost;
}

/** @param publish publishes an erratum, in the middle of the year; what is counted of the event is its change */
export async function keepCurrentForAYear(house: string, publish: () => Promise<void>): Promise<YearCosts> {
  const [byList, byChanges, byWebhook] = [new Counter(house), new Counter(house), new Counter(house)];
  const known = new Set((await releasesIn(new Counter(house))).map(nameOf));
  let after = (await changesAfter(new Counter(house), 0)).lastNumber;
  for (let day = 0; day < DAYS; day += 1) {
    if (day === Math.floor(DAYS / 2)) await publish();
    for (const release of (await releasesIn(byList)).filter((one) => !known.has(nameOf(one)))) {
      known.add(nameOf(release));
      await readFiles(byList, release);
    }
    const { items, lastNumber } = await changesAfter(byChanges, after);
    after = lastNumber;
    for (const { edition, revision, ...rest } of items) {
      byWebhook.requests += 1;
      byWebhook.bytes += JSON.stringify({ edition, revision, ...rest }).length;
      for (const counter of [byChanges, byWebhook]) await readArchive(counter, { edition, revision });
    }
  }
  return { byList: byList.cost, byChanges: byChanges.cost, byWebhook: byWebhook.cost };
}

const nameOf = ({ edition, revision }: Release): string => `${edition}/${revision}`;
const releasesIn = async (counter: Counter): Promise<Release[]> =>
  (JSON.parse((await counter.read('/v1/releases')).toString()) as { items: Release[] }).items;
const changesAfter = async (counter: Counter, after: number): Promise<{ items: Release[]; lastNumber: number }> =>
  JSON.parse((await counter.read(`/v1/changes?after=${after}&limit=1000`)).toString()) as { items: Release[]; lastNumber: number };
