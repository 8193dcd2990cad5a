import { useEffect, useMemo, useState } from 'preact/hooks';
import { BesideSheet } from '../bench/beside-sheet.js';
import { ConflictTable } from '../bench/conflict-table.js';
import { EndSheet } from '../bench/end-sheet.js';
import { EntryTable } from '../bench/entry-table.js';
import { signal } from '../bench/finding-signal.js';
import { LiveFigures } from '../bench/live-figures.js';
import { columnsOf, hasStations, treatmentOf } from '../bench/method-columns.js';
import { openSheet } from '../bench/open-sheet.js';
import type { OpenedSheet } from '../bench/open-sheet.js';
import { RecordsToSend } from '../bench/records-to-send.js';
import { SignalChoice } from '../bench/signal-choice.js';
import { SavingLine } from '../bench/saving-line.js';
import { contentOf } from '../bench/sheet-content.js';
import { SheetHeading } from '../bench/sheet-heading.js';
import { SheetKeeper } from '../bench/sheet-keeper.js';
import type { Keeping } from '../bench/sheet-keeper.js';
import { isBlank } from '../bench/sheet.js';
import { unitOf } from '../bench/fill-sheet.js';
import { usePreview } from '../bench/use-preview.js';
import type { ScreenProps } from '../frame/open-screen.js';
import { Cautions } from '../parts/cautions.js';
import { Findings } from '../parts/findings.js';
import { Loading } from '../parts/loading.js';
import { MethodHelp } from '../parts/method-help.js';
import { useLoaded } from '../parts/use-loaded.js';
import { TOLD_AT_THE_END } from '../words/method-help.js';

export function EnterReadings({ account }: ScreenProps) {
  const opened = useLoaded(() => openSheet(account.id, new URLSearchParams(window.location.search)));
  if (opened.answer) return <Entry opened={opened.answer} accountId={account.id} />;
  return (
    <>
      <h1>Enter readings</h1>
      <Loading of={opened} />
      <p>
        <a href="/desk/bench/">To the bench day</a>
      </p>
    </>
  );
}

function Entry({ opened, accountId }: { opened: OpenedSheet; accountId: string }) {
  const { method, questions } = opened;
  const columns = columnsOf(method);
  const roles = columns.map(({ role }) => role);
  const isByStation = hasStations(method);
  const treatment = treatmentOf(method);
  const toContent = (sheet: typeof opened.copy.sheet) => contentOf(sheet, roles, isByStation);
  const [keeping, setKeeping] = useState<Keeping | null>(null);
  const keeper = useMemo(
    () =>
      new SheetKeeper(accountId, opened.copy, toContent, (state) => {
        setKeeping(state);
        keepAddress(state);
      }),
    [opened],
  );
  useEffect(() => {
    if (opened.copy.reference !== null || !isBlank(opened.copy.sheet)) keeper.keep(opened.copy.sheet, true);
  }, [keeper]);
  const now = keeping ?? keeper.now;
  const { sheet } = now.copy;
  const content = toContent(sheet);
  const { preview, fault } = usePreview(content.specimens.length > 0 && content.specimens[0]?.readings.length !== 0 ? content : null);
  const { lacking = [], found = [] } = Object.groupBy(preview?.findings ?? [], ({ code }) =>
    TOLD_AT_THE_END.has(code) ? 'lacking' : 'found',
  );
  const urgent = found.filter(({ severity }) => severity !== 'note').length;
  useEffect(() => (urgent > 0 ? signal() : undefined), [urgent]);
  const first = columns[0];
  if (now.handedIn !== null || !first) return <HandedIn reference={now.handedIn ?? ''} accountId={accountId} copyId={now.copy.id} />;
  if (now.conflict)
    return <ConflictTable mine={sheet} theirs={now.conflict.theirs} columns={columns} onSettle={(merged) => keeper.settle(merged)} />;
  return (
    <>
      <SheetHeading sheet={sheet} method={method} />
      {questions
        .filter(({ answer }) => answer === null)
        .map(({ id, question, specimens }) => (
          <p class="caution" key={id}>
            The reviewer asks{specimens.length > 0 && `, of specimens ${specimens.join(', ')}`}: {question}
          </p>
        ))}
      <details open={sheet.rows.length <= 1}>
        <summary>Before you pull</summary>
        <Cautions ofMethod={method.wording.cautions} />
      </details>
      <MethodHelp method={method} />
      <LiveFigures {...{ sheet, treatment, preview }} column={first} wanted={method.limits.minimumSpecimens} hasStations={isByStation} />
      <p class="acts">
        {columns.map((column) => (
          <label key={column.role} hidden={column.units.length < 2}>
            {column.label} in{' '}
            <select
              value={unitOf(sheet, column)}
              onChange={(event) => keeper.keep({ ...sheet, units: { ...sheet.units, [column.role]: event.currentTarget.value } }, true)}
            >
              {column.units.map((unit) => (
                <option key={unit}>{unit}</option>
              ))}
            </select>
          </label>
        ))}
      </p>
      <EntryTable {...{ sheet, columns, treatment }} hasStations={isByStation} onType={(next, isRowDone) => keeper.keep(next, isRowDone)} />
      <SavingLine keeping={now} />
      <Findings findings={found} method={method} />
      {fault !== '' && <p class="signal">{fault}</p>}
      <BesideSheet
        {...{ sheet, columns, accountId }}
        reference={now.copy.reference}
        copyId={now.copy.id}
        onFill={(next) => keeper.keep(next, true)}
      />
      <SignalChoice />
      <EndSheet {...{ keeper, method, roles, lacking }} keeping={now} />
    </>
  );
}

/** The address leads back to this very sheet, whatever happens to the page. */
function keepAddress({ copy }: Keeping): void {
  const search = copy.reference === null ? `?copy=${copy.id}` : `?draft=${copy.reference}`;
  if (window.location.search !== search) window.history.replaceState(null, '', search);
}

function HandedIn(of: { reference: string; accountId: string; copyId: string }) {
  return (
    <>
      <h1>Handed in</h1>
      <p class="lede">{of.reference} waits for its reviewer. The readings are on record as you typed them, and stay so.</p>
      <RecordsToSend {...of} />
      <p class="acts">
        <a href="/desk/bench/">Next spool</a>
        <a href="/desk/submissions/">Your submissions</a>
      </p>
    </>
  );
}
