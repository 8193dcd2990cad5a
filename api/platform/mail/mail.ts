import { Inject, Injectable, Logger } from '@nestjs/common';
import { createTransport } from 'nodemailer';
import { CONFIG } from '../../config.js';
import type { Config } from '../../config.js';

export interface Letter {
  readonly to: string;
  readonly subject: string;
  readonly text: string;
}

const TIMEOUT_MS = 10_000;

/** Sends letters by the house's mail server (SMTP), where one is set up. */
@Injectable()
export class Mail {
  private readonly log = new Logger(Mail.name);

  constructor(@Inject(CONFIG) private readonly config: Config) {}

  get isSetUp(): boolean {
    return this.config.SMTP_URL !== '';
  }

  /** @returns whether the mail server has taken it; a failure is logged without what the letter says */
  async send({ to, subject, text }: Letter): Promise<boolean> {
    if (!this.isSetUp) return false;
    const url = this.config.SMTP_URL;
    const transport = createTransport({ url, connectionTimeout: TIMEOUT_MS, greetingTimeout: TIMEOUT_MS, socketTimeout: TIMEOUT_MS });
    try {
      await transport.sendMail({ from: { name: this.config.HOUSE_NAME, address: this.config.MAIL_FROM }, to, subject, text });
      return true;
    } catch (error) {
      this.log.error(`A letter was not sent: ${(error as Error).message}`);
      return false;
    } finally {
      transport.close();
    }
  }
}
