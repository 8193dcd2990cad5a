import { dayOf } from '../words/day-of.js';
import type { MethodVersion } from '../../../../api/contract/endpoints/methods.js';
import { methodAt } from '../words/method-help.js';
import type { Sheet } from './sheet.js';

/** What holds for the sheet, always in sight. */
export function SheetHeading({ sheet, method }: { sheet: Sheet; method: Pick<MethodVersion, 'slug' | 'name' | 'number'> }) {
  return (
    <>
      <h1>
        <span class="code">{sheet.spool}</span> {method.name}
      </h1>
      <dl class="context">
        {Object.entries({
          Day: dayOf(sheet.benchDay),
          Rig: sheet.instruments.join(' '),
          Air: `${sheet.temperature} ${sheet.temperatureUnit}, ${sheet.humidityPercent} %`,
        }).map(([term, value]) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>{value}</dd>
          </div>
        ))}
        <div>
          <dt>Method</dt>
          <dd>
            <a href={methodAt(method.slug, method.number)}>version {method.number}</a>
          </dd>
        </div>
      </dl>
    </>
  );
}
