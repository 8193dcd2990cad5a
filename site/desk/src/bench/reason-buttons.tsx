import { REASON_KEYS } from './reasons.js';
import type { InvalidReason, Row } from './sheet.js';

interface Props {
  readonly row: Row;
  readonly treatment: string | null;
  readonly onMark: (reason: InvalidReason) => void;
  readonly onTreat: () => void;
}

/** A button for each way of failing; the field that is typed into keeps the cursor. */
export function ReasonButtons({ row, treatment, onMark, onTreat }: Props) {
  return (
    <fieldset class="reasons" onMouseDown={(event) => event.preventDefault()}>
      <legend>
        Specimen {row.number} <span class="soft">does not count because it</span>
      </legend>
      {REASON_KEYS.map(({ reason, key, words }) => (
        <button type="button" key={reason} aria-pressed={row.reason === reason} onClick={() => onMark(reason)}>
          <kbd class="keys">{key}</kbd> {words}
        </button>
      ))}
      {treatment !== null && (
        <button type="button" aria-pressed={row.condition === 'treated'} onClick={onTreat}>
          <kbd class="keys">k</kbd> {treatment}
        </button>
      )}
    </fieldset>
  );
}
