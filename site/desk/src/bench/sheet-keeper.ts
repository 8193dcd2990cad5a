import { submissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import { ask } from '../http/ask.js';
import { newKey } from '../http/new-key.js';
import { NoAnswer, Refusal } from '../http/problem.js';
import { whenQuiet } from '../parts/when-quiet.js';
import { failureWords } from '../words/failure-words.js';
import { dropCopy, isSame, keepCopy } from './device-copy.js';
import type { DeviceCopy } from './device-copy.js';
import { isBlank } from './sheet.js';
import type { Sheet } from './sheet.js';

/** Another tab or device saved meanwhile. */
export interface Conflict {
  readonly version: number;
  readonly theirs: Sheet;
}

export interface Keeping {
  readonly copy: DeviceCopy;
  readonly fault: string;
  readonly conflict: Conflict | null;
  readonly isAway: boolean;
  /** Reference under which it stands on record; null until it was handed in. */
  readonly handedIn: string | null;
}

const AGAIN_MS = 3000;

/** Keeps a sheet: on the device at once, on the server as soon as it answers, handed in once. */
export class SheetKeeper {
  private state: Keeping;
  private isSending = false;
  private timer: ReturnType<typeof setTimeout> | undefined;

  constructor(
    private readonly accountId: string,
    copy: DeviceCopy,
    /** What is handed in of a sheet. */
    private readonly toContent: (sheet: Sheet) => unknown,
    private readonly onChange: (state: Keeping) => void,
  ) {
    this.state = { copy, fault: '', conflict: null, isAway: false, handedIn: null };
    window.addEventListener('online', () => void this.send());
  }

  get now(): Keeping {
    return this.state;
  }

  /** Puts the sheet on the device; `isRowDone` sends it as well. */
  keep(sheet: Sheet, isRowDone: boolean): void {
    this.update({ copy: { ...this.state.copy, sheet } });
    if (isRowDone) void this.send();
  }

  /** Goes on from the version that is on record, with the rows that were chosen. */
  settle(sheet: Sheet): void {
    const { conflict, copy } = this.state;
    if (!conflict) return;
    this.update({ conflict: null, copy: { ...copy, sheet, sent: conflict.theirs, version: conflict.version } });
    void this.send();
  }

  handIn(): void {
    this.update({ fault: '', copy: { ...this.state.copy, handInKey: this.state.copy.handInKey ?? newKey() } });
    void this.send();
  }

  async send(): Promise<void> {
    if (this.isSending || this.state.conflict || this.state.handedIn !== null) return;
    this.isSending = true;
    clearTimeout(this.timer);
    try {
      while (this.isBehind()) await this.step();
      this.update({ isAway: false });
    } catch (error) {
      this.fail(error);
    } finally {
      this.isSending = false;
    }
  }

  private isBehind(): boolean {
    const { copy, conflict, handedIn } = this.state;
    return conflict === null && handedIn === null && (this.isUnsaved() || copy.handInKey !== null);
  }

  /** A draft begins with what is typed first: a sheet that was only opened leaves nothing on the server. */
  private isUnsaved(): boolean {
    const { copy } = this.state;
    return copy.isDraft && !(copy.reference === null && isBlank(copy.sheet)) && !isSame(copy.sheet, copy.sent);
  }

  private async step(): Promise<void> {
    const { copy } = this.state;
    if (copy.reference === null) return this.begin();
    if (this.isUnsaved()) return this.save(copy.reference, copy.sheet);
    const key = copy.handInKey ?? '';
    await ask(submissionResponse, 'POST', `submissions/${copy.reference}/revisions`, {
      body: this.toContent(copy.sheet),
      key,
      ...(copy.version !== null && { version: copy.version }),
    });
    dropCopy(this.accountId, copy.id);
    this.state = { ...this.state, handedIn: copy.reference };
    this.onChange(this.state);
  }

  /** Sent with the copy's own key and nothing but the heading, so that a second attempt is the same request. */
  private async begin(): Promise<void> {
    const { id, sheet } = this.state.copy;
    const { edition, spool, method, methodVersion, benchDay } = sheet;
    const content = { edition, spool, method, methodVersion, benchDay };
    const { reference, version } = await ask(submissionResponse, 'POST', 'drafts', { body: { content }, key: id });
    this.update({ copy: { ...this.state.copy, reference, version } });
  }

  private async save(reference: string, sheet: Sheet): Promise<void> {
    const before = this.state.copy.attempted;
    const version = this.state.copy.version ?? 0;
    this.update({ copy: { ...this.state.copy, attempted: sheet } });
    try {
      const saved = await ask(submissionResponse, 'PUT', `drafts/${reference}`, { body: { content: sheet }, version });
      this.update({ copy: { ...this.state.copy, sent: sheet, version: saved.version, sentAt: new Date().toISOString() } });
    } catch (error) {
      const current = movedOn(error);
      if (current === null) throw error;
      const isOurs = isSame(current.theirs, before) || isSame(current.theirs, sheet);
      if (isOurs) this.update({ copy: { ...this.state.copy, sent: current.theirs, version: current.version } });
      else {
        await new Promise<void>(whenQuiet);
        this.update({ conflict: current });
      }
    }
  }

  private fail(error: unknown): void {
    const isAway = error instanceof NoAnswer || (error instanceof Refusal && (error.status >= 500 || error.code === 'request/key-busy'));
    if (isAway) {
      this.update({ isAway });
      this.timer = setTimeout(() => void this.send(), AGAIN_MS);
      return;
    }
    const faults = error instanceof Refusal ? error.faults.map(({ detail }) => detail) : [];
    this.update({ fault: [failureWords(error), ...faults].join(' '), copy: { ...this.state.copy, handInKey: null } });
  }

  private update(change: Partial<Keeping>): void {
    this.state = { ...this.state, ...change };
    keepCopy(this.accountId, this.state.copy);
    this.onChange(this.state);
  }
}

function movedOn(error: unknown): Conflict | null {
  if (!(error instanceof Refusal) || error.code !== 'request/if-match-stale') return null;
  const current = error.answer['current'] as { version: number; content: Sheet } | undefined;
  return current ? { version: current.version, theirs: current.content } : null;
}
