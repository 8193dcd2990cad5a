import { dayOf } from '../words/day-of.js';
import type { Sheet } from './sheet.js';

/** What holds for the sheet, always in sight. */
export function SheetHeading({ sheet, name }: { sheet: Sheet; name: string }) {
  return (
    <>
      <h1>
        <span class="code">{sheet.spool}</span> {name}
      </h1>
      <dl class="context">
        {Object.entries({
          Day: dayOf(sheet.benchDay),
          Rig: sheet.instruments.join(' '),
          Air: `${sheet.temperature} ${sheet.temperatureUnit}, ${sheet.humidityPercent} %`,
          Method: `version ${sheet.methodVersion}`,
        }).map(([term, value]) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}
