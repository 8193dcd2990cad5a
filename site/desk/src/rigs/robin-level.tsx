import type { RoundRobinReport } from '../../../../api/contract/documents/round-robins-document.js';

interface Props {
  readonly level: RoundRobinReport['levels'][number];
  readonly names: readonly { readonly number: number; readonly name: string }[];
}

/** One spool in every hand: means, spreads, and how far each is from the others. */
export function RobinLevel({ level, names }: Props) {
  const { meanN, repeatabilitySdN, reproducibilitySdN, cells } = level;
  return (
    <section>
      <h2>
        <span class="code">{level.level}</span>
      </h2>
      {cells.length === 0 && <p class="soft">Nobody has handed it in yet.</p>}
      {meanN !== null && reproducibilitySdN !== null && (
        <p>
          {meanN} N; one tester again s<sub>r</sub> = {repeatabilitySdN} N, another tester s<sub>R</sub> = {reproducibilitySdN} N (ISO
          5725-2).
        </p>
      )}
      {cells.length > 0 && (
        <div class="matrix" tabIndex={0} role="region" aria-label={`What each tester found on ${level.level}`}>
          <table class="sheet">
            <thead>
              <tr>
                <th scope="col">Tester</th>
                <th scope="col">Rig</th>
                <th scope="col" class="num">
                  Mean, N
                </th>
                <th scope="col" class="num">
                  Spread, N
                </th>
                <th scope="col" class="num">
                  h
                </th>
                <th scope="col" class="num">
                  k
                </th>
                <th scope="col">Told</th>
              </tr>
            </thead>
            <tbody>
              {cells.map(({ tester, instrument, meanN: mean, sdN, h, k, isFar, isWide }) => (
                <tr key={tester}>
                  <th scope="row">{names.find(({ number }) => number === tester)?.name ?? `number ${tester}`}</th>
                  <td data-label="Rig">{instrument}</td>
                  <td class="num" data-label="Mean, N">
                    {mean ?? '–'}
                  </td>
                  <td class="num" data-label="Spread, N">
                    {sdN ?? '–'}
                  </td>
                  <td class="num" data-label="h">
                    {h ?? '–'}
                  </td>
                  <td class="num" data-label="k">
                    {k ?? '–'}
                  </td>
                  <td data-label="Told">
                    {[isFar && 'far from the others', isWide && 'wider than the others'].filter(Boolean).join(', ') || 'agrees'}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </section>
  );
}
