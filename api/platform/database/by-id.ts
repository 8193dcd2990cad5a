/** What a read model tells of rows by their ids, for features whose own rows point at them. */
export class ById<T> extends Map<string, T> {
  /** @throws Error where nothing has the id: the database keeps what is pointed at, so that somebody forgot to ask for it */
  of(id: string): T {
    const found = this.get(id);
    if (found === undefined) throw new Error(`Found nothing under the id ${id}; expected a row that was asked for by it.`);
    return found;
  }
}

/** A condition on ids that may name the same row many times over. */
export const among = (ids: Iterable<string>): { in: string[] } => ({ in: [...new Set(ids)] });
