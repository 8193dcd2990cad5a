import { parse } from '@astrojs/compiler-rs';

/** Words that stand in a source file, as one message: `place {place} of {placed}`, `Several things? <a>Weigh them</a>`. */
export interface Message {
  /** The words in English, with what stands among them by name; the key under which a language has its own. */
  readonly words: string;
  readonly start: number;
  readonly end: number;
  /** The source that says it in other words. @param slice source between two places, with the messages in it put into other words too */
  readonly put: (words: string, slice: (start: number, end: number) => string) => string;
}

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [key: string]: unknown;
}

interface Place {
  readonly start: number;
  readonly end: number;
  readonly isTag?: boolean;
}

/** What stands between words, by name: an expression, a component, or a tag. */
interface Slot extends Place {
  /** `{placed}`, `<a>`, `</a>` */
  readonly mark: string;
}

const INLINE = new Set(['a', 'abbr', 'b', 'cite', 'code', 'em', 'i', 'kbd', 'label', 'small', 'span', 'strong', 'sub', 'sup', 'time']);
/** Attributes whose text readers see or hear, of elements and of our components. */
const SPOKEN = new Set(['alt', 'aria-label', 'caption', 'data-label', 'description', 'heading', 'heard', 'label', 'placeholder', 'title']);
const HAS_LETTERS = /\p{L}{2}/u;
const FENCE = '---\n';

/** Every message of a source file: texts of elements, spoken attributes, and what is marked by `say`. */
export function messagesIn(path: string, source: string): Message[] {
  const isScript = path.endsWith('.ts');
  const { ast } = parse(isScript ? `${FENCE}${source}\n${FENCE}` : source);
  const found: Message[] = [];
  walk(ast as unknown as Node, source, isScript ? FENCE.length : 0, found);
  return found;
}

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';
const childrenOf = (node: Node): Node[] => Object.values(node).flat().filter(isNode);
const listOf = (node: Node, key: string): Node[] => (Array.isArray(node[key]) ? node[key].filter(isNode) : []);

function walk(node: Node, source: string, offset: number, found: Message[], isWithin = false): void {
  if (node.type === 'JSXElement' && ['script', 'style', 'pre'].includes(tagOf(node))) return;
  if (node.type === 'TaggedTemplateExpression') found.push(...marked(node, source, offset));
  if (node.type === 'JSXAttribute') found.push(...spoken(node));
  const children = listOf(node, node.type === 'AstroRoot' ? 'body' : 'children');
  const runs = isWithin ? [] : runsOf(children);
  found.push(...runs.map((run) => textOf(run, source)));
  const said = new Set(isWithin ? children.filter(isSaid) : runs.flat().filter(isSaid));
  for (const child of childrenOf(node)) walk(child, source, offset, found, said.has(child));
}

const tagOf = (element: Node): string => nameOf((element['openingElement'] as Node)['name'] as Node);
const nameOf = (node: Node): string =>
  typeof node['name'] === 'string' ? node['name'] : isNode(node['property']) ? nameOf(node['property']) : '';

/** say`place ${place} of ${placed}` */
function marked(node: Node, source: string, offset: number): Message[] {
  const quasi = node['quasi'] as Node;
  if (nameOf(node['tag'] as Node) !== 'say') return [];
  const slots = named(
    listOf(quasi, 'expressions').map(({ start, end }) => ({ start: start - offset, end: end - offset })),
    source,
  );
  const parts = listOf(quasi, 'quasis').map((part) => (part['value'] as { cooked: string }).cooked);
  const words = parts.map((part, index) => part + (slots[index]?.mark ?? '')).join('');
  const put: Message['put'] = (said, slice) => {
    const text = replaced(
      said,
      slots,
      (part) => part.replaceAll(/[\\`]|\$(?=\{)/g, '\\$&'),
      ({ start, end }) => `\${${slice(start, end)}}`,
    );
    return `\`${text}\``;
  };
  return [trimmed({ words, start: node.start - offset, end: node.end - offset, put })];
}

/** label="Breaking force" */
function spoken(node: Node): Message[] {
  const value = node['value'] as Node | null;
  if (!SPOKEN.has(nameOf(node['name'] as Node)) || value?.type !== 'Literal') return [];
  const words = String(value['value']);
  if (!HAS_LETTERS.test(words)) return [];
  return [{ words, start: value.start, end: value.end, put: (said) => `{${JSON.stringify(said)}}` }];
}

/** Texts among the children of an element, each with what stands in its line. */
function runsOf(children: readonly Node[]): Node[][] {
  const runs: Node[][] = [[]];
  for (const child of children) {
    if (isBlock(child)) runs.push([]);
    else runs.at(-1)?.push(child);
  }
  return runs.filter(hasOwnWords);
}

const isBlock = (node: Node): boolean =>
  node.type === 'JSXElement' &&
  !INLINE.has(tagOf(node)) &&
  (/^[a-z]/.test(tagOf(node)) || listOf(node, 'children').some(({ type }) => type !== 'JSXText'));
const hasOwnWords = (run: readonly Node[]): boolean => run.some((one) => one.type === 'JSXText' && HAS_LETTERS.test(lineOf(one)));
/** An element that is said within the sentence: its tags are slots. */
const isSaid = (node: Node): boolean =>
  node.type === 'JSXElement' && INLINE.has(tagOf(node)) && runsOf(listOf(node, 'children')).length > 0;

/** Text as the page has it: line breaks and what indents them are gone, as in JSX. */
function lineOf(node: Node): string {
  const lines = String(node['raw'] ?? node['value']).split(/\r?\n/);
  return lines
    .map((line, at) => {
      const text = at === 0 ? line : line.trimStart();
      return at === lines.length - 1 ? text : text.trimEnd();
    })
    .filter((line, at) => line !== '' || (lines.length === 1 && at === 0))
    .join(' ');
}

function textOf(run: readonly Node[], source: string): Message {
  const pieces = run.flatMap(piecesOf);
  const slots = named(
    pieces.filter((piece) => typeof piece !== 'string'),
    source,
  );
  let at = 0;
  const words = pieces.map((piece) => (typeof piece === 'string' ? piece : (slots[at++]?.mark ?? ''))).join('');
  const put: Message['put'] = (said, slice) =>
    replaced(
      said,
      slots,
      (part) => `{${JSON.stringify(part)}}`,
      ({ start, end }) => slice(start, end),
    );
  return trimmed({ words, start: run[0]?.start ?? 0, end: run.at(-1)?.end ?? 0, put });
}

/** Words with each mark replaced by what it stands for. */
function replaced(said: string, slots: readonly Slot[], text: (part: string) => string, slot: (one: Slot) => string): string {
  return said
    .split(/(<\/?\w+>|\{\w+\})/)
    .filter((part) => part !== '')
    .map((part) => {
      const one = slots.find(({ mark }) => mark === part);
      return one ? slot(one) : text(part);
    })
    .join('');
}

function piecesOf(node: Node): (string | Place)[] {
  if (node.type === 'JSXText') return [lineOf(node)];
  const expression = node['expression'] as Node | undefined;
  if (node.type === 'JSXExpressionContainer' && expression?.type === 'Literal') return [String(expression['value'])];
  if (!isSaid(node)) return [{ start: node.start, end: node.end }];
  const [opening, closing] = [node['openingElement'] as Node, node['closingElement'] as Node];
  return [
    { start: opening.start, end: opening.end, isTag: true },
    ...listOf(node, 'children').flatMap(piecesOf),
    { start: closing.start, end: closing.end, isTag: true },
  ];
}

/** Names what stands among words by its own last name, else by a number; the second of a name as `a2`. */
function named(places: readonly Place[], source: string): Slot[] {
  const taken = new Map<string, number>();
  const open: string[] = [];
  return places.map((place, index) => {
    const text = source.slice(place.start, place.end);
    if (place.isTag && text.startsWith('</')) return { ...place, mark: `</${open.pop() ?? ''}>` };
    const own = /^<(\w+)/.exec(text)?.[1] ?? /(?:^|[.{\s(])(\w+)\)*\s*\}?$/.exec(text)?.[1] ?? String(index + 1);
    const count = (taken.get(own) ?? 0) + 1;
    taken.set(own, count);
    const name = count === 1 ? own : `${own}${count}`;
    if (place.isTag) open.push(name);
    return { ...place, mark: place.isTag ? `<${name}>` : `{${name}}` };
  });
}

/** White space about a message is no part of it. */
function trimmed({ words, put, ...place }: Message): Message {
  const [, before = '', own = '', after = ''] = /^(\s*)(.*?)(\s*)$/s.exec(words) ?? [];
  return { ...place, words: own, put: (said, slice) => put(before + said + after, slice) };
}
