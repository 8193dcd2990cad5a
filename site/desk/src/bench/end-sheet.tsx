import { useState } from 'preact/hooks';
import type { MethodVersion } from '../../../../api/contract/endpoints/methods.js';
import type { SubmissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import { Findings } from '../parts/findings.js';
import { untaken } from './fill-sheet.js';
import type { Keeping, SheetKeeper } from './sheet-keeper.js';

interface Props {
  readonly keeper: SheetKeeper;
  readonly keeping: Keeping;
  readonly method: MethodVersion;
  readonly roles: Parameters<typeof untaken>[1];
  /** What keeps the sheet from being full. */
  readonly lacking: SubmissionResponse['findings'];
}

/** What goes along with the readings, and the handing-in. Why too little counts is asked when somebody hands it in. */
export function EndSheet({ keeper, keeping, method, roles, lacking }: Props) {
  const { sheet, handInKey } = keeping.copy;
  const because = sheet.fewerBecause ?? '';
  const [isAsked, setIsAsked] = useState(because !== '');
  const open = untaken(sheet.rows, roles);
  const handIn = () => {
    if (open.length > 0) return;
    if (lacking.length > 0 && because.trim() === '') setIsAsked(true);
    else keeper.handIn();
  };
  const isShown = isAsked && (lacking.length > 0 || because !== '');
  return (
    <>
      <label class="tick">
        <input
          type="checkbox"
          checked={sheet.seenLabel}
          onChange={(event) => keeper.keep({ ...sheet, seenLabel: event.currentTarget.checked }, true)}
        />
        I have seen the label of this spool
      </label>
      <div class="field">
        <label for="note">A note for the reviewer</label>
        <textarea
          id="note"
          rows={2}
          value={sheet.note}
          onInput={(event) => keeper.keep({ ...sheet, note: event.currentTarget.value }, false)}
        />
      </div>
      {isShown && <Findings findings={lacking} method={method} />}
      {isShown && (
        <div class="field">
          <label for="fewer">Why fewer count than the method asks for</label>
          <textarea
            id="fewer"
            rows={2}
            autoFocus
            value={because}
            aria-describedby="fewer-hint"
            onInput={(event) => keeper.keep({ ...sheet, fewerBecause: event.currentTarget.value }, false)}
          />
          <p id="fewer-hint" class="soft small">
            A day that went badly belongs on record all the same: say why, then hand it in. Or go on above.
          </p>
        </div>
      )}
      {open.length > 0 && <p class="signal">Still to be looked at: row {open.join(', ')}. Press Enter there.</p>}
      {keeping.fault !== '' && (
        <p role="alert" class="signal">
          {keeping.fault}
        </p>
      )}
      <p class="acts">
        <button type="button" class="main" aria-disabled={open.length > 0 || handInKey !== null} onClick={handIn}>
          {handInKey === null ? 'Hand in' : 'Being handed in …'}
        </button>
        <a href="/desk/bench/">Back to the bench day; the sheet is kept</a>
      </p>
    </>
  );
}
