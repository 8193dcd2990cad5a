import { MOST_LISTED } from './file-limits.js';
import type { RowFault } from './row-fault.js';

const MOST_CHARACTERS = 80;

/** Gathers the faults of a file: the first so many as they are, of the rest the count. */
export class FaultList {
  private readonly listed: RowFault[] = [];
  private count = 0;
  private spoiled = false;

  add(...faults: readonly RowFault[]): void {
    for (const fault of faults) {
      this.count += 1;
      if (this.listed.length < MOST_LISTED) this.listed.push({ ...fault, found: shortened(fault.found) });
    }
  }

  /** Adds faults after which nobody can tell what belongs together: no submission of the file may be used. */
  spoil(...faults: readonly RowFault[]): void {
    this.spoiled ||= faults.length > 0;
    this.add(...faults);
  }

  /** Whether a submission of the file may be used beside others that have faults. */
  get isSound(): boolean {
    return !this.spoiled;
  }

  /** The same list for rows under a header with faults: only what stands in columns that were understood is told of them, not what is missing. */
  about(columns: ReadonlySet<string>): Pick<FaultList, 'add' | 'spoil'> {
    const isAbout = ({ column, found }: RowFault) => found !== '' && (column === '' || columns.has(column));
    return {
      add: (...faults) => {
        this.add(...faults.filter(isAbout));
      },
      spoil: (...faults) => {
        this.spoil(...faults.filter(isAbout));
      },
    };
  }

  /** In the order of the rows. */
  get faults(): RowFault[] {
    return this.listed.toSorted((one, other) => one.row - other.row);
  }

  /** How many more there are than are listed. */
  get furtherFaults(): number {
    return this.count - this.listed.length;
  }
}

const shortened = (text: string): string => (text.length > MOST_CHARACTERS ? `${text.slice(0, MOST_CHARACTERS)}…` : text);
