import { useState } from 'preact/hooks';
import { isSignalOn, switchSignal } from './finding-signal.js';

/** Kept on the device: a bench is loud or not, whoever pulls there. */
export function SignalChoice() {
  const [isOn, setIsOn] = useState(isSignalOn());
  return (
    <label class="tick">
      <input
        type="checkbox"
        checked={isOn}
        onChange={(event) => {
          switchSignal(event.currentTarget.checked);
          setIsOn(event.currentTarget.checked);
        }}
      />
      Sound and vibration for what needs a look
    </label>
  );
}
