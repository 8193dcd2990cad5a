import type { Preview } from './use-preview.js';
import type { Column } from './method-columns.js';
import { meanOf, validRows } from './sheet.js';
import type { Condition, Sheet } from './sheet.js';
import { unitOf } from './fill-sheet.js';

interface Props {
  readonly sheet: Sheet;
  readonly column: Column;
  readonly wanted: number;
  readonly treatment: string | null;
  readonly hasStations: boolean;
  readonly preview: Preview | null;
}

interface Spread {
  readonly cvPercent: number | null;
}

/** Counts and the mean are of this moment; spread and share come from the server, which knows how. Nothing here knows what the spool is. */
export function LiveFigures({ sheet, column, wanted, treatment, hasStations, preview }: Props) {
  const figures = preview?.figures;
  const conditions: readonly Condition[] = treatment === null ? ['untreated'] : ['untreated', 'treated'];
  const spread = (condition: Condition) =>
    (figures?.[condition === 'treated' ? 'treatedForceN' : 'breakingForceN'] as Spread | null | undefined)?.cvPercent;
  return (
    <dl class="live" aria-label="Figures so far">
      {conditions.map((condition) => {
        const rows = validRows(sheet, column.role, condition);
        const mean = meanOf(rows, column.role);
        const cv = spread(condition);
        return (
          <>
            <div>
              <dt>{hasStations ? 'Stations' : `Valid${condition === 'treated' ? `, ${treatment ?? ''}` : ''}`}</dt>
              <dd data-live="valid">
                {rows.length}
                {!hasStations && <span class="unit"> of {wanted}</span>}
              </dd>
            </div>
            <div>
              <dt>Mean</dt>
              <dd data-live="mean">
                {mean === null ? '–' : mean.toPrecision(4)}{' '}
                <span class="unit">{rows[0]?.cells[column.role]?.unit ?? unitOf(sheet, column)}</span>
              </dd>
            </div>
            {!hasStations && (
              <div>
                <dt>Spread</dt>
                <dd data-live="spread">
                  {cv === null || cv === undefined ? '–' : cv.toFixed(1)} <span class="unit">%</span>
                </dd>
              </div>
            )}
          </>
        );
      })}
      {!hasStations && (
        <div>
          <dt>Broke at the grip</dt>
          <dd data-live="grip">
            {figures ? Number(figures['gripBreakSharePercent']).toFixed(0) : '–'} <span class="unit">%</span>
          </dd>
        </div>
      )}
    </dl>
  );
}
