import type { ReadingRole } from '../../../../api/contract/submission-content.js';
import { cellOf, isEmpty, isTaken } from './sheet.js';
import type { Row, Sheet } from './sheet.js';

const readingsOf = (row: Row, roles: readonly ReadingRole[], station: number | null) =>
  roles
    .map((role) => ({ role, station, ...cellOf(row, role) }))
    .filter(isTaken)
    .map(({ role, text, unit }) => ({ role, station, value: text, unit }));

/** The sheet as it is handed in; rows without a reading stay behind. */
export function contentOf(sheet: Sheet, roles: readonly ReadingRole[], hasStations: boolean) {
  const rows = sheet.rows.filter((row) => !isEmpty(row) && roles.some((role) => isTaken(cellOf(row, role))));
  const {
    edition,
    spool,
    method,
    methodVersion,
    benchDay,
    zone,
    instruments,
    temperature,
    temperatureUnit,
    humidityPercent,
    seenLabel,
    note,
    fewerBecause = '',
  } = sheet;
  const specimens = hasStations
    ? [{ number: 1, readings: rows.flatMap((row) => readingsOf(row, roles, row.number)) }]
    : rows.map((row) => ({
        number: row.number,
        condition: row.condition,
        ...(row.reason === null ? { validity: 'valid' } : { validity: 'invalid', invalidReason: row.reason }),
        readings: readingsOf(row, roles, null),
      }));
  return {
    ...{ edition, spool, method, methodVersion, benchDay, zone, instruments, seenLabel },
    ambient: { temperature: { value: temperature, unit: temperatureUnit }, humidityPercent },
    ...(note.trim() !== '' && { note }),
    ...(fewerBecause.trim() !== '' && { fewerBecause }),
    specimens,
  };
}
