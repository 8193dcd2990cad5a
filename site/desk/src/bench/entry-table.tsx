import { Fragment } from 'preact';
import type { TargetedClipboardEvent, TargetedKeyboardEvent } from 'preact';
import { useLayoutEffect, useState } from 'preact/hooks';

import { actOfKey } from './entry-keys.js';
import { EntryQuestion, EntryRow, idOf } from './entry-row.js';
import type { Asked, Place } from './entry-row.js';
import { signal } from './finding-signal.js';
import type { Column } from './method-columns.js';
import { pastedCells } from './pasted-cells.js';
import { ReasonButtons } from './reason-buttons.js';

import { cellOf, isWhole, withCell, withRow } from './sheet.js';
import type { InvalidReason, Sheet } from './sheet.js';
import { pasted, taken, unitOf, withRoom } from './fill-sheet.js';
import { readTyped } from './typed-reading.js';

interface Props {
  readonly sheet: Sheet;
  readonly columns: readonly Column[];
  readonly hasStations: boolean;
  readonly treatment: string | null;
  readonly onType: (sheet: Sheet, isRowDone: boolean) => void;
}

const focusOn = (place: Place) => document.getElementById(idOf(place))?.focus();

/** One row a specimen: number, Enter, number, Enter. */
export function EntryTable({ sheet, columns, hasStations, treatment, onType }: Props) {
  const [at, setAt] = useState<Place>({ index: Math.max(0, sheet.rows.length - 1), column: 0 });
  const [asked, setAsked] = useState<Asked | null>(null);
  const roles = columns.map(({ role }) => role);
  const row = sheet.rows[at.index];

  useLayoutEffect(() => focusOn(at), []);

  const go = (place: Place) => {
    setAsked(null);
    setAt(place);
    focusOn(place);
  };
  const onwards = ({ index, column }: Place, next: Sheet) => {
    const isLast = column === columns.length - 1;
    const done = next.rows[index];
    onType(withRoom(next), done !== undefined && (isLast || isWhole(done, roles)));
    go(isLast ? { index: index + 1, column: 0 } : { index, column: column + 1 });
  };
  const enter = (place: Place) => {
    const column = columns[place.column];
    const current = sheet.rows[place.index];
    if (!column || !current) return;
    const cell = cellOf(current, column.role);
    if (cell.text !== '' && cell.unit !== '') {
      onwards(place, sheet);
      return;
    }
    if (asked?.take && asked.index === place.index && asked.column === place.column) {
      onwards(place, withCell(sheet, place.index, column.role, asked.take));
      return;
    }
    const typed = readTyped(cell.text, column.role, unitOf(sheet, column));
    if (typed.is === 'number') {
      onwards(place, withCell(sheet, place.index, column.role, { text: typed.value, unit: typed.unit }));
      return;
    }
    if (typed.is === 'empty') {
      if (place.column > 0 || current.reason !== null) onwards(place, sheet);
      return;
    }
    signal();
    setAsked({ ...place, words: typed.words, take: typed.is === 'question' ? { text: typed.value, unit: typed.unit } : null });
  };
  const back = ({ index, column }: Place) => {
    if (column > 0) go({ index, column: column - 1 });
    else if (index > 0) go({ index: index - 1, column: columns.length - 1 });
  };
  const mark = (reason: InvalidReason) => {
    if (row) onType(withRow(sheet, at.index, { reason: row.reason === reason ? null : reason }), false);
    focusOn(at);
  };
  const treat = () => {
    if (!row || treatment === null) return;
    onType(withRow(sheet, at.index, { condition: row.condition === 'treated' ? 'untreated' : 'treated' }), false);
    focusOn(at);
  };
  const press = (place: Place, event: TargetedKeyboardEvent<HTMLInputElement>) => {
    const act = actOfKey(event, event.currentTarget.value === '', {
      enter: () => enter(place),
      back: () => back(place),
      up: () => place.index > 0 && go({ ...place, index: place.index - 1 }),
      down: () => place.index < sheet.rows.length - 1 && go({ ...place, index: place.index + 1 }),
      mark: hasStations ? null : mark,
      treat: treatment === null ? null : treat,
    });
    if (!act) return;
    event.preventDefault();
    act();
  };
  const type = ({ index, column }: Place, text: string) => {
    const role = columns[column]?.role;
    setAsked(null);
    if (role) onType(withCell(sheet, index, role, { text, unit: '' }), false);
  };
  const leave = ({ index, column }: Place) => {
    const known = columns[column];
    const next = known ? taken(sheet, index, known) : sheet;
    if (next !== sheet) onType(withRoom(next), true);
  };
  const paste = ({ index, column }: Place, event: TargetedClipboardEvent<HTMLInputElement>) => {
    const cells = pastedCells(event.clipboardData?.getData('text') ?? '');
    if (!cells) return;
    event.preventDefault();
    onType(withRoom(pasted(sheet, index, columns.slice(column), cells)), true);
    go({ index: index + cells.length, column });
  };

  const subject = hasStations ? 'station' : 'specimen';
  const acts = { onArrive: setAt, onLeave: leave, onInput: type, onKey: press, onPaste: paste };
  return (
    <>
      <table class="entry">
        <thead>
          <tr>
            <th scope="col">
              <abbr title={subject}>No.</abbr>
            </th>
            {columns.map((column) => (
              <th scope="col" key={column.role}>
                {column.label} [{unitOf(sheet, column)}]
              </th>
            ))}
            <th scope="col">
              <span class="only-heard">Why it does not count</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {sheet.rows.map((one, index) => (
            <Fragment key={one.number}>
              <EntryRow row={one} {...{ index, sheet, columns, subject, treatment, asked, acts }} />
              {asked?.index === index && (
                <EntryQuestion asked={asked} width={columns.length + 2} onYes={() => enter(asked)} onNo={() => go(asked)} />
              )}
            </Fragment>
          ))}
        </tbody>
      </table>
      {!hasStations && row && <ReasonButtons row={row} treatment={treatment} onMark={mark} onTreat={treat} />}
    </>
  );
}
