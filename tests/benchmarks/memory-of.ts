import { readdirSync, readFileSync } from 'node:fs';

/** What a process and all that it started hold in memory [MB], itself alone and all together; Linux only. */
export function memoryOf(pid: number): { readonly own: number; readonly all: number } {
  const parents = new Map<number, number>();
  for (const name of readdirSync('/proc').filter((entry) => /^\d+$/.test(entry))) {
    const parent = /\) \S (\d+)/.exec(textOf(`/proc/${name}/stat`))?.[1];
    if (parent !== undefined) parents.set(Number(name), Number(parent));
  }
  const isBelow = (one: number): boolean => one === pid || (parents.has(one) && isBelow(parents.get(one) ?? 0));
  const held = (one: number): number => Number(/VmRSS:\s+(\d+) kB/.exec(textOf(`/proc/${one}/status`))?.[1] ?? 0) / 1000;
  return { own: held(pid), all: [...parents.keys()].filter(isBelow).reduce((sum, one) => sum + held(one), 0) };
}

/** A process may end while one looks. */
function textOf(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return '';
  }
}
