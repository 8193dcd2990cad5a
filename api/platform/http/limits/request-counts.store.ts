import { Injectable } from '@nestjs/common';
import { Database } from '../../database/database.js';

/** A minute of a network, by the clock of the database: those of the servers may differ. */
export interface CountedMinute {
  readonly network: string;
  /** Of all servers together. */
  readonly requests: number;
  /** How long ago the minute began [ms]. */
  readonly ageMs: number;
}

/** The only writer of what all servers together were asked. */
@Injectable()
export class RequestCountsStore {
  constructor(private readonly database: Database) {}

  /** Adds what one server was asked; networks in one order, so that two servers never wait for each other. */
  async add(more: ReadonlyMap<string, number>): Promise<CountedMinute[]> {
    const networks = [...more.keys()].sort();
    const requests = networks.map((network) => more.get(network) ?? 0);
    return this.database.client.$queryRaw<CountedMinute[]>`
      INSERT INTO request_count AS c (network, began_at, requests)
      SELECT network, now(), requests FROM unnest(${networks}::text[], ${requests}::int[]) AS more (network, requests)
      ON CONFLICT (network) DO UPDATE SET
        requests = CASE WHEN c.began_at > now() - interval '1 minute' THEN c.requests ELSE 0 END + EXCLUDED.requests,
        began_at = CASE WHEN c.began_at > now() - interval '1 minute' THEN least(c.began_at, now()) ELSE now() END
      RETURNING network, requests, (extract(epoch FROM now() - began_at) * 1000)::float8 AS "ageMs"`;
  }

  forgetOld() {
    return this.database.client.$executeRaw`DELETE FROM request_count WHERE began_at < now() - interval '2 minutes'`;
  }
}
