import { Inject, Injectable } from '@nestjs/common';
import { AwsClient } from 'aws4fetch';
import { CONFIG } from '../../config.js';
import type { Config } from '../../config.js';

const NOT_FOUND = 404;
/** The signing client tries again by itself what failed on the other side. */
const RETRIES = 4;

/** What an object is sent with, by whatever stands before the storage. */
export interface ObjectHeaders {
  readonly 'Content-Type': string;
  readonly 'Cache-Control': string;
}

/** A bucket of any service that speaks S3, addressed by path; absent where the configuration names none. */
@Injectable()
export class ObjectStorage {
  private readonly bucket: string;
  private readonly client: AwsClient;

  constructor(@Inject(CONFIG) config: Config) {
    this.bucket = config.OBJECT_STORAGE.replace(/\/$/, '');
    this.client = new AwsClient({
      accessKeyId: config.OBJECT_STORAGE_KEY,
      secretAccessKey: config.OBJECT_STORAGE_SECRET,
      region: config.OBJECT_STORAGE_REGION,
      service: 's3',
      retries: RETRIES,
    });
  }

  get isWished(): boolean {
    return this.bucket !== '';
  }

  async write(key: string, bytes: Uint8Array<ArrayBuffer>, headers: ObjectHeaders): Promise<void> {
    await this.ask('PUT', key, { body: bytes, headers: { ...headers } });
  }

  /** Text of an object; null when there is none. */
  async read(key: string): Promise<string | null> {
    const answer = await this.ask('GET', key);
    return answer.status === NOT_FOUND ? null : answer.text();
  }

  async has(key: string): Promise<boolean> {
    return (await this.ask('HEAD', key)).ok;
  }

  private async ask(method: string, key: string, init: RequestInit = {}): Promise<Response> {
    const address = `${this.bucket}/${key.split('/').map(encodeURIComponent).join('/')}`;
    const answer = await this.client.fetch(address, { ...init, method });
    if (answer.ok || (answer.status === NOT_FOUND && method !== 'PUT')) return answer;
    throw new Error(
      `The object storage answered ${answer.status} to ${method} ${address}. ${await answer.text()} Look at OBJECT_STORAGE and its key; what is published here stays as it is.`,
    );
  }
}
