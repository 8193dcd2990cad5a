/** Where a sheet comes from: this device, a draft on the server, a returned submission, or a code and the day's context. */
import { isBlindCode, normaliseBlindCode } from '../../../../api/contract/blind-code.js';
import { methodResponse, methodVersionResponse } from '../../../../api/contract/endpoints/methods.js';
import type { MethodVersion } from '../../../../api/contract/endpoints/methods.js';
import { submissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import type { SubmissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import type { ReadingRole } from '../../../../api/contract/submission-content.js';
import { ask } from '../http/ask.js';
import { newKey } from '../http/new-key.js';
import { readContext } from './bench-context.js';
import { copiesOf, dropCopy, isSame } from './device-copy.js';
import type { DeviceCopy } from './device-copy.js';
import type { Cell, Condition, InvalidReason, Row, Sheet } from './sheet.js';
import { withRoom } from './fill-sheet.js';

export interface OpenedSheet {
  readonly copy: DeviceCopy;
  readonly method: MethodVersion;
  /** Questions of the reviewer that sent it back. */
  readonly questions: SubmissionResponse['queries'];
}

const EMPTY = { sent: null, attempted: null, sentAt: null, handInKey: null };

export async function openSheet(accountId: string, parameters: URLSearchParams): Promise<OpenedSheet> {
  const kept = copiesOf(accountId).find(({ id }) => id === parameters.get('copy'));
  const reference = parameters.get('draft');
  if (kept) return withMethod(kept);
  if (reference !== null) return ofSubmission(accountId, reference);
  return withMethod(await newSheet(accountId, normaliseBlindCode(parameters.get('spool') ?? ''), parameters.get('method') ?? ''));
}

async function newSheet(accountId: string, spool: string, method: string): Promise<DeviceCopy> {
  const context = readContext(accountId);
  if (!context) throw new Error('Say first what holds for the whole day: edition, rig, air. It stands on the page of the bench day.');
  if (!isBlindCode(spool))
    throw new Error(`${spool || 'Nothing'} is no code of a spool: its last character does not fit the others. Read the label again.`);
  const { versions } = await ask(methodResponse, 'GET', `catalogue/methods/${method}`);
  const valid = versions.filter(
    ({ effectiveFrom, effectiveUntil }) => effectiveFrom <= context.benchDay && (effectiveUntil ?? '9999') >= context.benchDay,
  );
  const version = valid.at(-1);
  if (!version) throw new Error(`No version of ${method} is in force on ${context.benchDay}. Look at the bench day, or ask an editor.`);
  const sheet: Sheet = withRoom({
    ...context,
    spool,
    method,
    methodVersion: version.number,
    seenLabel: false,
    note: '',
    units: {},
    rows: [],
  });
  return { id: newKey(), reference: null, isDraft: true, version: null, sheet, ...EMPTY };
}

async function ofSubmission(accountId: string, reference: string): Promise<OpenedSheet> {
  const found = await ask(submissionResponse, 'GET', `submissions/${reference}`);
  const copies = copiesOf(accountId).filter((copy) => copy.reference === reference);
  const ahead = copies.find((copy) => !isSame(copy.sheet, copy.sent));
  for (const { id } of copies.filter((copy) => copy !== ahead && isSame(copy.sheet, copy.sent))) dropCopy(accountId, id);
  if (ahead) return withMethod(ahead, found.queries);
  const isDraft = found.state === 'draft';
  const sheet = isDraft ? sheetOfDraft(accountId, found) : sheetOfReturned(found);
  const copy = {
    ...EMPTY,
    id: newKey(),
    reference,
    isDraft,
    version: found.version,
    sheet,
    sent: isDraft ? (found.draft as unknown as Sheet) : null,
  };
  return withMethod(copy, found.queries);
}

/** A draft that the desk began carries its sheet; one that was just begun, or began elsewhere, only its heading. */
function sheetOfDraft(accountId: string, { draft, edition, spool, method, benchDay }: SubmissionResponse): Sheet {
  const kept = draft as unknown as Partial<Sheet> | null;
  if (kept?.rows) return withRoom(kept as Sheet);
  const context = readContext(accountId);
  if (!context) throw new Error('Say first what holds for the whole day: edition, rig, air. It stands on the page of the bench day.');
  return withRoom({
    ...context,
    edition,
    spool,
    method: method.slug,
    methodVersion: method.number,
    benchDay,
    seenLabel: false,
    note: '',
    units: {},
    rows: [],
  });
}

function sheetOfReturned(found: SubmissionResponse): Sheet {
  const { edition, spool, method, benchDay, zone, instruments, temperature, humidityPercent, hasSeenLabel, note, fewerBecause } = found;
  const isByStation = found.specimens.some(({ readings }) => readings.some(({ station }) => station !== null));
  const rows = isByStation ? stationRows(found) : found.specimens.map(rowOf);
  return withRoom({
    ...{ edition, spool, method: method.slug, methodVersion: method.number, benchDay, zone: zone ?? 'UTC', rows, units: {} },
    instruments: instruments.map(({ code }) => code),
    temperature: temperature?.text ?? '',
    temperatureUnit: temperature?.unit === '°F' ? '°F' : '°C',
    humidityPercent: humidityPercent ?? '',
    seenLabel: hasSeenLabel ?? false,
    note: note ?? '',
    fewerBecause: fewerBecause ?? '',
  });
}

type Readings = SubmissionResponse['specimens'][number]['readings'];
const cellsOf = (readings: Readings): Row['cells'] =>
  Object.fromEntries(readings.map(({ role, entered }): [ReadingRole, Cell] => [role as ReadingRole, entered]));

const rowOf = ({ number, condition, state, reason, readings }: SubmissionResponse['specimens'][number]): Row => ({
  number,
  condition: condition as Condition,
  reason: state === 'invalid' ? (reason as InvalidReason) : null,
  cells: cellsOf(readings),
});

function stationRows({ specimens }: SubmissionResponse): Row[] {
  const readings = specimens.flatMap((specimen) => specimen.readings);
  const stations = [...new Set(readings.map(({ station }) => station ?? 1))].sort((a, b) => a - b);
  return stations.map((number) => ({
    ...{ number, condition: 'untreated' as const, reason: null },
    cells: cellsOf(readings.filter(({ station }) => (station ?? 1) === number)),
  }));
}

async function withMethod(copy: DeviceCopy, questions: OpenedSheet['questions'] = []): Promise<OpenedSheet> {
  const { method, methodVersion } = copy.sheet;
  return { copy, questions, method: await ask(methodVersionResponse, 'GET', `catalogue/methods/${method}/versions/${methodVersion}`) };
}
