import { z } from 'zod';
import { Form } from './form.js';

const schema = z.strictObject({ reason: z.string().trim().min(1, 'Say why, in words.').max(2000) });

interface Props {
  /** What is done, on the line that opens it and on the button. */
  readonly act: string;
  readonly keptAs: string;
  readonly label?: string;
  /** @returns what happened, in words */
  readonly onSend: (reason: string) => Promise<string>;
}

/** An act that wants a reason: a line that opens, and no more until then. */
export function WithReason({ act, keptAs, label = 'Why', onSend }: Props) {
  return (
    <details>
      <summary>{act}</summary>
      <Form
        schema={schema}
        submit={act}
        keptAs={keptAs}
        fields={[{ name: 'reason', label, kind: 'words' }]}
        onSend={({ reason }) => onSend(reason)}
      />
    </details>
  );
}
