/** Tells the time; a class, so that it is its own injection key and a season can be played back. */
export class Clock {
  now(): Date {
    return new Date();
  }
}
