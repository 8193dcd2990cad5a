import { useEffect, useRef, useState } from 'preact/hooks';

/** Reads a label with the camera; the reader is fetched when it is asked for, as most benches type or have a scanner that types. */
export function Scanner({ onText }: { onText: (text: string) => void }) {
  const [isOn, setIsOn] = useState(false);
  const [fault, setFault] = useState('');
  const video = useRef<HTMLVideoElement>(null);
  useEffect(() => {
    if (!isOn || !video.current) return;
    let isOver = false;
    let stop = () => {
      isOver = true;
    };
    void startScanning(video.current, (text) => {
      setIsOn(false);
      onText(text);
    }).then(
      (end) => {
        stop = end;
        if (isOver) end();
      },
      () => {
        setFault('The camera cannot be used here. It works on this device over https, once you allow it; until then, type the code.');
        setIsOn(false);
      },
    );
    return () => stop();
  }, [isOn]);
  return (
    <>
      <button
        type="button"
        aria-pressed={isOn}
        onClick={() => {
          setFault('');
          setIsOn(!isOn);
        }}
      >
        {isOn ? 'Stop the camera' : 'Scan with the camera'}
      </button>
      {isOn && <video ref={video} class="scanner" muted playsInline aria-label="What the camera sees; hold the label before it" />}
      <span role="alert" class="signal">
        {fault}
      </span>
    </>
  );
}

/** @returns how to stop */
async function startScanning(player: HTMLVideoElement, onText: (text: string) => void): Promise<() => void> {
  const { QRCanvas, frameLoop, rearCamera } = await import('qr/dom.js');
  const camera = await rearCamera(player);
  const canvas = new QRCanvas();
  let isReading = false;
  const cancel = frameLoop(() => {
    if (isReading) return;
    isReading = true;
    void camera
      .readFrame(canvas)
      .then((found) => {
        if (found === undefined) return;
        stop();
        onText(String(found));
      })
      .finally(() => {
        isReading = false;
      });
  });
  const stop = () => {
    cancel();
    camera.stop();
  };
  return stop;
}
