import type { z } from 'zod';
import type { boardResponse } from '../../../../api/contract/endpoints/board.js';
import type { SchemeCategory } from '../../../../api/contract/endpoints/schemes.js';

interface Props {
  /** Of the division; empty where everything is compared with everything. */
  readonly name: string;
  readonly entries: z.infer<typeof boardResponse>['entries'];
  readonly categories: readonly SchemeCategory[];
}

const counted = (count: number | undefined, what: string): string => `${count ?? 0} ${what}${count === 1 ? '' : 's'}`;

/** Entry by category: enough, or what is there so far; what lacks stands at the end of the row, in words. */
export function BoardMatrix({ name, entries, categories }: Props) {
  const complete = entries.filter(({ missing, exclusion }) => missing.length === 0 && exclusion === null).length;
  return (
    <>
      {name !== '' && <h3>{name}</h3>}
      <p>
        {complete} of {entries.length} entries have a result in every category.
      </p>
      <div class="matrix" tabIndex={0} role="region" aria-label={`Entries by category${name && `, ${name}`}`}>
        <table>
          <thead>
            <tr>
              <th scope="col">Entry</th>
              {categories.map(({ code, name: category }) => (
                <th scope="col" key={code}>
                  {category}
                </th>
              ))}
              <th scope="col">Lacks</th>
            </tr>
          </thead>
          <tbody>
            {entries.map(({ variant, missing, needs, evidence, exclusion }) => (
              <tr key={variant}>
                <th scope="row">
                  {variant}
                  {exclusion !== null && <span class="soft"> excluded</span>}
                </th>
                {categories.map(({ code }) => {
                  const there = evidence.find(({ category }) => category === code);
                  return (
                    <td key={code}>
                      {missing.includes(code) ? <span class="signal">not yet</span> : 'enough'}
                      <br />
                      <span class="soft small">
                        {counted(there?.specimens, 'specimen')}, {counted(there?.testers, 'tester')}, {counted(there?.rigs, 'rig')}
                      </span>
                    </td>
                  );
                })}
                <td>{needs.join('; ')}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}
