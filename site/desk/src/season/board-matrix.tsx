import type { z } from 'zod';
import type { boardResponse } from '../../../../api/contract/endpoints/board.js';
import type { SchemeCategory } from '../../../../api/contract/endpoints/editions.js';

interface Props {
  readonly board: z.infer<typeof boardResponse>;
  readonly categories: readonly SchemeCategory[];
}

const counted = (count: number | undefined, what: string): string => `${count ?? 0} ${what}${count === 1 ? '' : 's'}`;

/** What an entry lacks in a category: the words of the board without its code. */
const lackingIn = (code: string, needs: readonly string[]): string[] =>
  needs.filter((words) => words.split(/[ :,]/).includes(code)).map((words) => words.replace(` in ${code}`, ''));

/** Entry by category: enough, or what lacks, in words, over what is there so far. */
export function BoardMatrix({ board, categories }: Props) {
  const complete = board.entries.filter(({ missing, exclusion }) => missing.length === 0 && exclusion === null).length;
  return (
    <>
      <p>
        {complete} of {board.entries.length} entries have a result in every category.
      </p>
      <div class="matrix" tabIndex={0} role="region" aria-label="Entries by category">
        <table>
          <thead>
            <tr>
              <th scope="col">Entry</th>
              {categories.map(({ code, name }) => (
                <th scope="col" key={code}>
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {board.entries.map(({ variant, missing, needs, evidence, exclusion }) => (
              <tr key={variant}>
                <th scope="row">
                  {variant}
                  {exclusion !== null && <span class="soft"> excluded</span>}
                </th>
                {categories.map(({ code }) => {
                  const there = evidence.find(({ category }) => category === code);
                  return (
                    <td key={code}>
                      <span class={missing.includes(code) ? 'signal' : ''}>
                        {lackingIn(code, needs).join(', ') || (missing.includes(code) ? 'not yet' : 'enough')}
                      </span>
                      <br />
                      <span class="soft small">
                        {counted(there?.specimens, 'specimen')}, {counted(there?.testers, 'tester')}, {counted(there?.rigs, 'rig')}
                      </span>
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}
