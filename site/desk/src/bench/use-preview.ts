import { useEffect, useRef, useState } from 'preact/hooks';
import type { z } from 'zod';
import { submissionPreview } from '../../../../api/contract/endpoints/submissions.js';
import { ask } from '../http/ask.js';
import { NoAnswer } from '../http/problem.js';
import { failureWords } from '../words/failure-words.js';

export type Preview = z.infer<typeof submissionPreview>;

const REST_MS = 250;

/** What the checks say of a sheet as it stands; the answer before stays until the next is there. */
export function usePreview(content: object | null): { readonly preview: Preview | null; readonly fault: string } {
  const [preview, setPreview] = useState<Preview | null>(null);
  const [fault, setFault] = useState('');
  const newest = useRef(0);
  const text = JSON.stringify(content);
  useEffect(() => {
    if (content === null) return;
    const number = (newest.current += 1);
    const timer = setTimeout(() => {
      ask(submissionPreview, 'POST', 'submissions/preview', { body: content }).then(
        (answer) => {
          if (number !== newest.current) return;
          setPreview(answer);
          setFault('');
        },
        (error: unknown) => {
          if (number === newest.current && !(error instanceof NoAnswer)) setFault(failureWords(error));
        },
      );
    }, REST_MS);
    return () => clearTimeout(timer);
  }, [text]);
  return { preview, fault };
}
