import { useContext } from 'preact/hooks';
import type { z } from 'zod';
import type { boardResponse } from '../../../../api/contract/endpoints/board.js';
import type { SchemeCategory } from '../../../../api/contract/endpoints/schemes.js';
import { isWide } from '../parts/is-wide.js';
import { NameOf } from '../parts/variant-names.js';

interface Props {
  /** Of the division; empty where everything is compared with everything. */
  readonly name: string;
  readonly entries: z.infer<typeof boardResponse>['entries'];
  readonly categories: readonly SchemeCategory[];
  /** Whether it is the only table: then it stands open on a phone, too. */
  readonly isAlone: boolean;
  /** Of several, the first alone stands open, where there is room. */
  readonly isFirst: boolean;
  /** Asks for what an entry lacks. */
  readonly onAsk: (variant: string) => void;
}

/** What an entry lacks in a category: the words of the board without its code. */
const lackingIn = (code: string, needs: readonly string[]): string[] =>
  needs.filter((words) => words.split(/[ :,]/).includes(code)).map((words) => words.replace(` in ${code}`, ''));

interface CellProps {
  readonly code: string;
  readonly isMissing: boolean;
  readonly needs: readonly string[];
  readonly there: Props['entries'][number]['evidence'][number] | undefined;
}

function Cell({ code, isMissing, needs, there }: CellProps) {
  if (!there || there.specimens === 0) return isMissing ? <strong>nothing yet</strong> : <>enough</>;
  const lacking = lackingIn(code, needs).join(', ');
  return (
    <>
      <span class={isMissing ? 'signal' : ''}>{lacking || (isMissing ? 'not yet' : 'enough')}</span>{' '}
      <span class="soft small">
        {there.specimens} · {there.testers} · {there.rigs}
      </span>
    </>
  );
}

/** Entry by category: enough, or what lacks, in words, over what is there so far. */
export function BoardMatrix({ name, entries, categories, isAlone, isFirst, onAsk }: Props) {
  const nameOf = useContext(NameOf);
  const complete = entries.filter(({ missing, exclusion }) => missing.length === 0 && exclusion === null).length;
  return (
    <details open={isAlone || (isFirst && isWide())}>
      <summary>
        {name !== '' && <strong>{name}: </strong>}
        {complete} of {entries.length} entries have a result in every category
      </summary>
      <p class="soft">Beside each: specimens, testers, rigs. Press an entry to ask somebody for what it lacks.</p>
      <div class="matrix board" tabIndex={0} role="region" aria-label={`Entries by category${name && `, ${name}`}`}>
        <table>
          <thead>
            <tr>
              <th scope="col">Entry</th>
              {categories.map(({ code, name: category }) => (
                <th scope="col" key={code}>
                  {category}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {entries.map(({ variant, missing, needs, evidence, exclusion }) => (
              <tr key={variant}>
                <th scope="row">
                  <a href="#who-pulls-what" onClick={() => onAsk(variant)}>
                    {nameOf(variant)}
                  </a>
                  {exclusion !== null && <span class="soft"> excluded</span>}
                  {missing.length === 0 && <span class="soft on-phone"> enough in every category</span>}
                </th>
                {categories.map(({ code, name: category }) => {
                  return (
                    <td key={code} data-label={category} class={missing.includes(code) ? '' : 'enough'}>
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
    </details>
  );
}
