import type { SubmissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import { reasonWords } from '../bench/reasons.js';
import type { InvalidReason } from '../bench/sheet.js';

interface Props {
  readonly specimens: SubmissionResponse['specimens'];
  /** Number → why it is to be set aside. */
  readonly setAside: Readonly<Record<number, string>>;
  readonly onSetAside: (number: number, reason: string | null) => void;
  readonly canDecide: boolean;
}

/** Units that are SI already, with a prefix or without: there is nothing to put beside them. */
const SI = ['N', 'kN', 's', 'm', 'mm', 'µm', 'g', 'mg', 'kg'];

const SHOWN_DIGITS = 5;

/** Readings as they were typed, with the same in SI beside them where they are not. */
export function SpecimensTable({ specimens, setAside, onSetAside, canDecide }: Props) {
  const isInSi = specimens.every(({ readings }) => readings.every(({ entered }) => SI.includes(entered.unit)));
  return (
    <table class="sheet readings">
      <caption>{isInSi ? 'Readings as entered, all in SI units.' : 'Readings as entered; the same in SI beside them.'}</caption>
      <thead>
        <tr>
          <th scope="col">No.</th>
          <th scope="col">As entered</th>
          {!isInSi && <th scope="col">In SI</th>}
          <th scope="col">Counts</th>
        </tr>
      </thead>
      <tbody>
        {specimens.map(({ number, condition, state, reason, readings }) => (
          <tr key={number} class={state === 'valid' && setAside[number] === undefined ? '' : 'not-counted'}>
            <th scope="row">{number}</th>
            <td data-label="As entered">
              {readings.map(({ entered }) => `${entered.text} ${entered.unit}`).join(', ')}
              {condition === 'treated' && <span class="soft"> treated</span>}
            </td>
            {!isInSi && (
              <td class="si" data-label="In SI">
                {readings.map(({ value, unit }) => `${short(value)} ${unit}`).join(', ')}
              </td>
            )}
            <td data-label="Counts">
              {state === 'invalid' && `no: ${reasonWords(reason as InvalidReason)}`}
              {state === 'setAside' && `set aside: ${reason ?? ''}`}
              {state === 'valid' && canDecide && <SettingAside number={number} reason={setAside[number]} onSetAside={onSetAside} />}
              {state === 'valid' && !canDecide && 'yes'}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** A converted reading carries digits that nobody read. */
const short = (value: string): string => (value.length > SHOWN_DIGITS + 1 ? Number(value).toPrecision(SHOWN_DIGITS) : value);

function SettingAside({ number, reason, onSetAside }: { number: number; reason: string | undefined } & Pick<Props, 'onSetAside'>) {
  if (reason === undefined)
    return (
      <button type="button" class="set-aside" onClick={() => onSetAside(number, '')}>
        Set aside<span class="only-heard"> specimen {number}</span>
      </button>
    );
  return (
    <span class="acts">
      <label>
        Set aside because
        <input
          value={reason}
          aria-label={`Why specimen ${number} is set aside`}
          onInput={(event) => onSetAside(number, event.currentTarget.value)}
        />
      </label>
      <button type="button" onClick={() => onSetAside(number, null)}>
        Count it
      </button>
    </span>
  );
}
