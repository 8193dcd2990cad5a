import { useLayoutEffect, useState } from 'preact/hooks';
import type { TargetedClipboardEvent, TargetedKeyboardEvent } from 'preact';
import type { Column } from './method-columns.js';
import { pastedCells } from './pasted-cells.js';
import { REASON_KEYS, reasonWords } from './reasons.js';
import { cellOf, isWhole, withCell, withRow } from './sheet.js';
import type { InvalidReason, Sheet } from './sheet.js';
import { pasted, taken, unitOf, withRoom } from './type-sheet.js';
import { readTyped } from './typed-reading.js';

interface Props {
  readonly sheet: Sheet;
  readonly columns: readonly Column[];
  readonly hasStations: boolean;
  readonly treatment: string | null;
  readonly onType: (sheet: Sheet, isRowDone: boolean) => void;
}

interface Place {
  readonly index: number;
  readonly column: number;
}
interface Asked extends Place {
  readonly words: string;
  /** What a second Enter takes; null for a fault. */
  readonly take: { readonly text: string; readonly unit: string } | null;
}

const idOf = ({ index, column }: Place) => `cell-${index}-${column}`;
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
    const isEmpty = event.currentTarget.value === '';
    const reason = REASON_KEYS.find(({ key }) => key === event.key.toLowerCase());
    const acts: Record<string, () => void> = {
      ...(isEmpty && { Backspace: () => back(place) }),
      ...(isEmpty && reason && !hasStations && { [event.key]: () => mark(reason.reason) }),
      ...(isEmpty && treatment !== null && { k: treat }),
      Enter: () => enter(place),
      ArrowUp: () => place.index > 0 && go({ ...place, index: place.index - 1 }),
      ArrowDown: () => place.index < sheet.rows.length - 1 && go({ ...place, index: place.index + 1 }),
    };
    const act = event.ctrlKey || event.metaKey || event.altKey ? undefined : acts[event.key];
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

  return (
    <>
      <table class="entry">
        <thead>
          <tr>
            <th scope="col">
              <abbr title={hasStations ? 'station' : 'specimen'}>No.</abbr>
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
            <>
              <tr key={one.number} class={one.reason === null ? '' : 'invalid'}>
                <th scope="row">{one.number}</th>
                {columns.map(({ role, label }, column) => {
                  const place = { index, column };
                  const cell = cellOf(one, role);
                  const isOther = cell.unit !== '' && cell.unit !== unitOf(sheet, columns[column] ?? { role, label, units: [] });
                  return (
                    <td key={role}>
                      <input
                        id={idOf(place)}
                        value={cell.text}
                        inputMode="decimal"
                        autocomplete="off"
                        enterkeyhint="next"
                        aria-label={`${label}, ${hasStations ? 'station' : 'specimen'} ${one.number}`}
                        aria-invalid={asked?.index === index && asked.column === column}
                        onFocus={() => setAt(place)}
                        onBlur={() => leave(place)}
                        onInput={(event) => type(place, event.currentTarget.value)}
                        onKeyDown={(event) => press(place, event)}
                        onPaste={(event) => paste(place, event)}
                      />
                      {isOther && <span class="small"> {cell.unit}</span>}
                    </td>
                  );
                })}
                <td class="why">{[one.condition === 'treated' ? treatment : null, reasonWords(one.reason)].filter(Boolean).join(', ')}</td>
              </tr>
              {asked?.index === index && (
                <tr class="question" key={`${one.number}?`}>
                  <td colSpan={columns.length + 2}>
                    <span role="alert">{asked.words}</span>
                    {asked.take && (
                      <span class="acts">
                        <button type="button" onClick={() => enter(asked)}>
                          Yes, {asked.take.text} {asked.take.unit}
                        </button>
                        <button type="button" onClick={() => go(asked)}>
                          No, I type it again
                        </button>
                      </span>
                    )}
                  </td>
                </tr>
              )}
            </>
          ))}
        </tbody>
      </table>
      {!hasStations && row && (
        <fieldset class="reasons">
          <legend>
            Specimen {row.number} <span class="soft">does not count because it</span>
          </legend>
          {REASON_KEYS.map(({ reason, key, words }) => (
            <button
              type="button"
              key={reason}
              aria-pressed={row.reason === reason}
              onMouseDown={(event) => event.preventDefault()}
              onClick={() => mark(reason)}
            >
              <kbd>{key}</kbd> {words}
            </button>
          ))}
          {treatment !== null && (
            <button
              type="button"
              aria-pressed={row.condition === 'treated'}
              onMouseDown={(event) => event.preventDefault()}
              onClick={treat}
            >
              <kbd>k</kbd> {treatment}
            </button>
          )}
        </fieldset>
      )}
    </>
  );
}
