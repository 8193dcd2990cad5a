import { setTimeout as pause } from 'node:timers/promises';
import type { DemoAccount } from '../demo-accounts.js';

interface Sending {
  readonly body?: unknown;
  /** Sent as it is, as text/csv. */
  readonly csv?: string;
  /** Version that the change is based on. */
  readonly version?: number;
}

/** How long a house that asks to be asked again later is waited for [ms]. */
const WAITED_FOR_MS = 120_000;

/** What a house that is not ready asks one to wait [ms]; 0 where it says nothing of the kind. */
const waitAskedBy = ({ status, headers }: Response): number => (status === 503 ? Number(headers.get('retry-after') ?? 0) * 1000 : 0);

type Method = 'GET' | 'POST' | 'DELETE';

/** A program speaking for one account, over HTTP as any other program would. */
export class HouseClient {
  private constructor(
    private readonly url: string,
    private readonly credentials: Readonly<Record<string, string>>,
    private readonly tokenId: string | null = null,
  ) {}

  /** Somebody without an account. */
  static stranger(url: string): HouseClient {
    return new HouseClient(url, {});
  }

  /** Signs in by password, makes a token for a season's work, and signs out of the session again. */
  static async signedIn(url: string, { email, password, roles }: DemoAccount): Promise<HouseClient> {
    const session = await fetch(`${url}/v1/sessions`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify({ email, password }),
    });
    if (!session.ok) throw new Error(`Signing in as ${email} was answered by ${session.status}: ${await session.text()}`);
    const { csrfToken } = (await session.json()) as { csrfToken: string };
    const cookie = session.headers
      .getSetCookie()
      .map((one) => one.split(';')[0])
      .join('; ');
    const browser = new HouseClient(url, { Cookie: cookie, 'X-CSRF-Token': csrfToken });
    const { id, token } = await browser.post<{ id: string; token: string }>('/v1/tokens', {
      body: { name: 'A winter at the bench', scopes: roles, expiresInDays: 366 },
    });
    await browser.request('DELETE', '/v1/sessions/current', {});
    return new HouseClient(url, { Authorization: `Bearer ${token}` }, id);
  }

  /** Takes its token away, so that none lies about. */
  async signOut(): Promise<void> {
    if (this.tokenId !== null) await this.request('DELETE', `/v1/tokens/${this.tokenId}`, {});
  }

  get<Answer>(path: string): Promise<Answer> {
    return this.json('GET', path, {});
  }

  post<Answer>(path: string, sending: Sending = {}): Promise<Answer> {
    return this.json('POST', path, sending);
  }

  /** What a request that should be refused is answered by. */
  async refusal(path: string, sending: Sending): Promise<{ readonly status: number; readonly body: string }> {
    const response = await this.fetch('POST', path, sending);
    return { status: response.status, body: await response.text() };
  }

  private async json<Answer>(method: Method, path: string, sending: Sending): Promise<Answer> {
    const response = await this.request(method, path, sending);
    const text = await response.text();
    return (text === '' ? undefined : JSON.parse(text)) as Answer;
  }

  private async request(method: Method, path: string, sending: Sending): Promise<Response> {
    const until = Date.now() + WAITED_FOR_MS;
    let response = await this.fetch(method, path, sending);
    // A machine that stands still for a moment must not cost the whole loading; what only asks may ask again.
    for (let wait = waitAskedBy(response); method === 'GET' && wait > 0 && Date.now() + wait < until; wait = waitAskedBy(response)) {
      await pause(wait);
      response = await this.fetch(method, path, sending);
    }
    if (response.ok) return response;
    throw new Error(`${method} ${path} was answered by ${response.status}: ${(await response.text()).slice(0, 2000)}`);
  }

  private fetch(method: Method, path: string, { body, csv, version }: Sending): Promise<Response> {
    const hasContent = body !== undefined || csv !== undefined;
    return fetch(`${this.url}${path}`, {
      method,
      headers: {
        ...this.credentials,
        // On one machine packing costs more than it saves.
        'Accept-Encoding': 'identity',
        ...(hasContent ? { 'Content-Type': csv === undefined ? 'application/json' : 'text/csv' } : {}),
        ...(version === undefined ? {} : { 'If-Match': `"${version}"` }),
      },
      ...(hasContent ? { body: csv ?? JSON.stringify(body) } : {}),
    });
  }
}
