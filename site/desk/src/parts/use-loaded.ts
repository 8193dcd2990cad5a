import { useCallback, useEffect, useState } from 'preact/hooks';
import { failureWords } from '../words/failure-words.js';

export interface Loaded<Answer> {
  readonly answer: Answer | null;
  readonly fault: string;
  readonly again: () => void;
}

/** Asks when the screen opens, and again on request; what was there stays until the new answer is. */
export function useLoaded<Answer>(load: () => Promise<Answer>, dependencies: readonly unknown[] = []): Loaded<Answer> {
  const [answer, setAnswer] = useState<Answer | null>(null);
  const [fault, setFault] = useState('');
  const again = useCallback(() => {
    load().then(
      (next) => {
        setAnswer(next);
        setFault('');
      },
      (error: unknown) => setFault(failureWords(error)),
    );
  }, dependencies);
  useEffect(again, [again]);
  return { answer, fault, again };
}
