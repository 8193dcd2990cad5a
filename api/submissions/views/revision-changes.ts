/** What one revision of a submission says otherwise than the one before, place by place. Pure. */
export interface RevisionChange {
  /** RFC 6901, as in what is handed in. */
  readonly pointer: string;
  /** Null where it was not there. */
  readonly before: string | null;
  readonly after: string | null;
}

/** A revision as it was handed in, place → text. */
export type HandedInCells = ReadonlyMap<string, string>;

interface StoredRevision {
  readonly zone: string;
  readonly temperatureText: string;
  readonly temperatureUnit: string;
  readonly humidityPercent: { toFixed(): string };
  readonly hasSeenLabel: boolean;
  readonly note: string | null;
  readonly fewerBecause: string | null;
  readonly specimens: readonly {
    readonly number: number;
    readonly condition: string;
    readonly validity: string;
    readonly invalidReason: string | null;
    readonly readings: readonly {
      readonly role: string;
      readonly station: number | null;
      readonly enteredText: string;
      readonly enteredUnit: string;
    }[];
  }[];
}

/** @param used instruments by their codes, in the order of these */
export function handedInCells(
  revision: StoredRevision,
  used: { readonly instruments: readonly { readonly code: string }[] },
): HandedInCells {
  const { zone, temperatureText, temperatureUnit, humidityPercent, hasSeenLabel, note, fewerBecause, specimens } = revision;
  return new Map([
    ['/zone', zone],
    ['/ambient/temperature', `${temperatureText} ${temperatureUnit}`],
    ['/ambient/humidityPercent', humidityPercent.toFixed()],
    ['/seenLabel', String(hasSeenLabel)],
    ['/note', note ?? ''],
    ['/fewerBecause', fewerBecause ?? ''],
    ['/instruments', used.instruments.map(({ code }) => code).join(', ')],
    ...specimens.flatMap(({ number, condition, validity, invalidReason, readings }): [string, string][] => [
      [`/specimens/${number}/condition`, condition],
      [`/specimens/${number}/validity`, invalidReason === null ? validity : `${validity}: ${invalidReason}`],
      ...readings.map(({ role, station, enteredText, enteredUnit }): [string, string] => [
        `/specimens/${number}/${role}${station === null ? '' : `/${station}`}`,
        `${enteredText} ${enteredUnit}`,
      ]),
    ]),
  ]);
}

/** Specimens are named by their numbers, not by their order. */
export function changesBetween(before: HandedInCells, after: HandedInCells): RevisionChange[] {
  const places = [...new Set([...before.keys(), ...after.keys()])];
  return places.flatMap((pointer) => {
    const [was, is] = [before.get(pointer) ?? null, after.get(pointer) ?? null];
    return was === is ? [] : [{ pointer, before: was, after: is }];
  });
}
