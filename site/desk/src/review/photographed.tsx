import type { SubmissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import { Photos } from '../parts/photos.js';

/** Pictures that came with a submission, and those of its spool: a label is shown on a press. */
export function Photographed({ submission: { reference, spool } }: { submission: SubmissionResponse }) {
  return (
    <section>
      <h2>Photos</h2>
      <Photos of={`submissions/${reference}`} first="break" canAdd={false} none="None came with it." />
      <Photos of={`catalogue/spools/${spool}`} first="label" canAdd={false} />
    </section>
  );
}
