import type { z } from 'zod';
import type { boardResponse } from '../../../../api/contract/endpoints/board.js';
import type { SchemeCategory } from '../../../../api/contract/endpoints/schemes.js';

interface Props {
  readonly board: z.infer<typeof boardResponse>;
  readonly categories: readonly SchemeCategory[];
}

/** What an entry lacks in a category: the words of the board without its code. */
const lackingIn = (code: string, needs: readonly string[]): string[] =>
  needs.filter((words) => words.split(/[ :,]/).includes(code)).map((words) => words.replace(` in ${code}`, ''));

interface CellProps {
  readonly code: string;
  readonly isMissing: boolean;
  readonly needs: readonly string[];
  readonly there: Props['board']['entries'][number]['evidence'][number] | undefined;
}

function Cell({ code, isMissing, needs, there }: CellProps) {
  if (!there || there.specimens === 0) return isMissing ? <strong>nothing yet</strong> : <>enough</>;
  const lacking = lackingIn(code, needs).join(', ');
  return (
    <>
      <span class={isMissing ? 'signal' : ''}>{lacking || (isMissing ? 'not yet' : 'enough')}</span>
      <br />
      <span class="soft small">
        {there.specimens} · {there.testers} · {there.rigs}
      </span>
    </>
  );
}

/** Entry by category: enough, or what lacks, in words, over what is there so far. */
export function BoardMatrix({ board, categories }: Props) {
  const complete = board.entries.filter(({ missing, exclusion }) => missing.length === 0 && exclusion === null).length;
  return (
    <>
      <p>
        {complete} of {board.entries.length} entries have a result in every category. Below each: specimens, testers, rigs.
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
                  return (
                    <td key={code}>
                      <Cell
                        code={code}
                        isMissing={missing.includes(code)}
                        needs={needs}
                        there={evidence.find(({ category }) => category === code)}
                      />
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
