/** Which cells are of which division. Pure. */
import type { RevisionCells } from './release-inputs.js';

interface Part {
  /** Null of what is of the whole edition, or of an edition with one division. */
  readonly division: { readonly slug: string; readonly name: string } | null;
  readonly before: RevisionCells;
  readonly after: RevisionCells;
}

/** Two revisions division by division in the order of the editor, at last what is of the whole edition; of an edition with one division as they are. */
export function partsOf(before: RevisionCells, after: RevisionCells): Part[] {
  const { divisions } = after;
  if (!divisions) return [{ division: null, before, after }];
  const [was, is] = [apart({ divisions, ...before }), apart(after)];
  return [...divisions, null].map((division) => ({ division, before: was(division?.slug), after: is(division?.slug) }));
}

/** A division's own cells; without one those of the whole edition. */
function apart({ cells, top, divisions = [], ...told }: RevisionCells): (division?: string) => RevisionCells {
  const home = new Map(divisions.flatMap(({ slug, variants }) => variants.map((variant) => [variant, slug] as const)));
  const cellsIn = Map.groupBy(Object.entries(cells), ([where]) => folderIn(where) ?? home.get(variantIn(where)));
  return (division) => ({
    ...told,
    cells: Object.fromEntries(cellsIn.get(division) ?? []),
    top: top.filter((variant) => home.get(variant) === division),
  });
}

const folderIn = (where: string): string | undefined => /^documents\/divisions\/([^/]+)\//.exec(where)?.[1];

/** Of a cell that is named by it: "overall, <variant>, place", or the content of its document. */
const variantIn = (where: string): string => /^documents\/variants\/(.+)\.json, /.exec(where)?.[1] ?? where.split(', ')[1] ?? '';
