/** A tone and a shake for what a tester has to look at, where the device can and somebody wishes it; off at first. */
const KEPT_AS = 'desk.signal';
const TONE_HZ = 440;
const TONE_SECONDS = 0.25;
const SHAKE_MS = 200;

export const isSignalOn = (): boolean => localStorage.getItem(KEPT_AS) === 'on';

export function switchSignal(isOn: boolean): void {
  localStorage.setItem(KEPT_AS, isOn ? 'on' : 'off');
  // It is heard at once what is switched on; browsers let sound begin with a press alone.
  signal();
}

let sound: AudioContext | undefined;

export function signal(): void {
  if (!isSignalOn()) return;
  // Missing in Safari.
  (navigator as Partial<Navigator>).vibrate?.(SHAKE_MS);
  sound ??= new AudioContext();
  const tone = sound.createOscillator();
  tone.frequency.value = TONE_HZ;
  tone.connect(sound.destination);
  tone.start();
  tone.stop(sound.currentTime + TONE_SECONDS);
}
