import { useState } from 'preact/hooks';
import { failureWords } from '../words/failure-words.js';

/** Carries out an act of a button, says what happened or what was refused, and asks for the new state. */
export function useAct(onDone: () => void) {
  const [said, setSaid] = useState('');
  const act = (run: () => Promise<unknown>, words: string): void => {
    run().then(
      () => {
        setSaid(words);
        onDone();
      },
      (error: unknown) => setSaid(failureWords(error)),
    );
  };
  return { said, act };
}
