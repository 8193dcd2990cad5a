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
  const { items } = JSON.parse((await counter.read('/v1/releases')).toString()) as { items: Release[] };
  for (const { edition, revision } of items) {
    const at = `/v1/releases/${edition}/${revision}`;
    const manifest = JSON.parse((await counter.read(`${at}/manifest.json`)).toString()) as { files: { path: string }[] };
    await counter.read(`${at}/signature.json`);
    for (const { path } of manifest.files) if (path !== 'release.zip') await counter.read(`${at}/${path}`);
  }
  return counter.cost;
}

/** The list and three files a release. */
export async function mirrorByArchive(house: string): Promise<Cost> {
  const counter = new Counter(house);
  const { items } = JSON.parse((await counter.read('/v1/releases')).toString()) as { items: Release[] };
  for (const { edition, revision } of items)
    for (const name of ['manifest.json', 'signature.json', 'release.zip'])
      await counter.read(`/v1/releases/${edition}/${revision}/${name}`);
  return counter.cost;
}
