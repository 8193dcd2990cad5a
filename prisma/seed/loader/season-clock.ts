import { Clock } from '../../../api/platform/clock/clock.js';

/** The clock of a season that is played back: it stands until it is moved, and only ever forwards. */
export class SeasonClock extends Clock {
  private time: Date;

  /** @param day first day, ISO 8601 */
  constructor(day: string) {
    super();
    this.time = new Date(`${day}T08:00:00Z`);
  }

  override now(): Date {
    return new Date(this.time);
  }

  /**
   * @param day ISO 8601
   * @param hour of that day, UTC
   * @throws Error for a time before the present one
   */
  moveTo(day: string, hour = 12): void {
    const time = new Date(`${day}T${String(hour).padStart(2, '0')}:00:00Z`);
    if (time < this.time) throw new Error(`The season stands at ${this.time.toISOString()}; it does not go back to ${time.toISOString()}.`);
    this.time = time;
  }
}
