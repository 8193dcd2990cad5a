import { writeFileSync } from 'node:fs';

const SIDE = 240;

/**
 * Writes what a camera sees that is held over a printed label: the raw film that a browser takes for one.
 * @param modules of the code, true where it is dark, row by row
 */
export function filmOf(path: string, modules: readonly (readonly boolean[])[]): void {
  const scale = Math.floor(SIDE / (modules.length + 8));
  const light = Buffer.alloc(SIDE * SIDE, 235);
  const margin = Math.floor((SIDE - modules.length * scale) / 2);
  for (let y = 0; y < modules.length * scale; y += 1)
    for (let x = 0; x < modules.length * scale; x += 1)
      if (modules[Math.floor(y / scale)]![Math.floor(x / scale)]) light[(margin + y) * SIDE + margin + x] = 16;
  const colour = Buffer.alloc((SIDE * SIDE) / 2, 128);
  const frame = Buffer.concat([Buffer.from('FRAME\n'), light, colour]);
  writeFileSync(
    path,
    Buffer.concat([Buffer.from(`YUV4MPEG2 W${SIDE} H${SIDE} F10:1 Ip A1:1 C420mpeg2\n`), ...Array.from({ length: 20 }, () => frame)]),
  );
}
