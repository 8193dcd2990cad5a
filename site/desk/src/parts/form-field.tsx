import type { FieldOptions } from './field-options.js';

type Props = FieldOptions & { readonly id: string; readonly fault: string | undefined };

export function Field(props: Props) {
  const { id, label, kind = 'text', hint, fault, isOptional = false } = props;
  if (kind === 'several') return <Several {...props} />;
  return (
    <div class="field">
      <label for={id}>
        {label}
        {isOptional && <span class="soft"> if there is one</span>}
      </label>
      <Control {...props} />
      {hint !== undefined && (
        <p id={`${id}-hint`} class="soft small">
          {hint}
        </p>
      )}
      {fault !== undefined && (
        <p id={`${id}-fault`} class="signal small">
          {fault}
        </p>
      )}
    </div>
  );
}

function Control({
  id,
  name,
  kind = 'text',
  value = '',
  options = [],
  known = [],
  hint,
  fault,
  autocomplete = 'off',
  hasFocus = false,
}: Props) {
  const told = [hint !== undefined && `${id}-hint`, fault !== undefined && `${id}-fault`].filter(Boolean).join(' ');
  const common = { id, name, 'aria-invalid': fault !== undefined, ...(told !== '' && { 'aria-describedby': told }), autoFocus: hasFocus };
  if (kind === 'words') return <textarea {...common} rows={rowsFor(value)} defaultValue={value} />;
  if (kind === 'choice')
    return (
      <select {...common}>
        {options.map(([sent, read]) => (
          <option key={sent} value={sent} selected={sent === value}>
            {read}
          </option>
        ))}
      </select>
    );
  const isNumber = kind === 'number' || kind === 'decimal' || kind === 'reading';
  const type = isNumber ? 'text' : kind === 'moment' ? 'datetime-local' : kind;
  return (
    <>
      <input
        {...common}
        type={type}
        defaultValue={value}
        autocomplete={autocomplete}
        class={kind}
        {...(isNumber && { inputMode: 'decimal' as const })}
        {...(known.length > 0 && { list: `${id}-known` })}
      />
      {known.length > 0 && (
        <datalist id={`${id}-known`}>
          {known.map((one) => (
            <option key={one} value={one} />
          ))}
        </datalist>
      )}
    </>
  );
}

const [FEWEST_ROWS, MOST_ROWS, LETTERS_A_ROW] = [3, 12, 32];

/** What stands there already is read without moving it about, until it is long. */
const rowsFor = (text: string): number =>
  Math.min(
    MOST_ROWS,
    Math.max(
      FEWEST_ROWS,
      text.split('\n').reduce((rows, line) => rows + Math.ceil((line.length || 1) / LETTERS_A_ROW), 0),
    ),
  );

function Several({ id, name, label, options = [], ticked = [], fault }: Props) {
  const tick = ([sent, read]: (typeof options)[number]) => (
    <label key={sent} class="tick">
      <input
        type="checkbox"
        name={name}
        value={sent}
        defaultChecked={ticked.includes(sent)}
        {...(fault !== undefined && { 'aria-describedby': `${id}-fault` })}
      />{' '}
      {read}
    </label>
  );
  return (
    <fieldset class="field" data-fault={fault}>
      <legend>{label}</legend>
      {[...Map.groupBy(options, ([, , foldedIn]) => foldedIn)].map(([foldedIn, own]) =>
        foldedIn === undefined ? (
          own.map(tick)
        ) : (
          <details key={foldedIn}>
            <summary>
              {foldedIn}: {own.length}
            </summary>
            <button type="button" onClick={tickAllOrNone}>
              {own.length === 1 ? 'Tick it, or not' : `Tick all ${own.length}, or none`}
            </button>
            {own.map(tick)}
          </details>
        ),
      )}
      {fault !== undefined && (
        <p id={`${id}-fault`} class="signal small">
          {fault}
        </p>
      )}
    </fieldset>
  );
}

/** Of those that stand beside the button; the form hears of it as if each had been pressed. */
function tickAllOrNone({ currentTarget }: { readonly currentTarget: HTMLElement }): void {
  const ticks = [...(currentTarget.closest('details')?.querySelectorAll('input') ?? [])];
  const isAny = ticks.some(({ checked }) => !checked);
  for (const one of ticks) one.checked = isAny;
  currentTarget.dispatchEvent(new Event('input', { bubbles: true }));
}
