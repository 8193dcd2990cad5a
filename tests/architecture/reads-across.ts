/** How a feature reads another's tables rather than asking its read model. */
import ts from 'typescript';

/** By Prisma's `include` and `select`, by a relation in `where` or `orderBy`, by the client's own name of the table, by plain SQL. */
export type WayOfReading = 'relation' | 'filter' | 'direct' | 'sql';

export interface ModelRead {
  /** Prisma's name. */
  readonly model: string;
  readonly way: WayOfReading;
}

/** Prisma's name of a model → its fields that are relations → the model that each leads to. */
export type Relations = ReadonlyMap<string, ReadonlyMap<string, string>>;

const READS = /^(find(First|Unique)(OrThrow)?|findMany|count|groupBy|aggregate)$/;
const RAW_READ = /(?<!DELETE )\b(?:FROM|JOIN)\s+"?([a-z_]+)"?/g;
const PRISMA_INPUT = /Prisma\.(\w+?)(Include|Select|WhereInput|WhereUniqueInput|OrderByWithRelationInput)\b/;
const WAY_OF_KEY: Readonly<Record<string, WayOfReading | 'none'>> = {
  include: 'relation',
  select: 'relation',
  where: 'filter',
  orderBy: 'filter',
  data: 'none',
  create: 'none',
  update: 'none',
};

const lowered = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);

/** @param models texts of prisma/models/ */
export function relationsOf(models: readonly string[]): Relations {
  const bodies = models.flatMap((text) => [...text.matchAll(/^model (\w+) \{([\s\S]*?)^\}/gm)]);
  const names = new Set(bodies.map(([, name = '']) => name));
  return new Map(
    bodies.map(([, name = '', body = '']) => [
      lowered(name),
      new Map(
        [...body.matchAll(/^\s+(\w+)\s+(\w+)(?:\[\]|\?)?(?=\s|$)/gm)].flatMap(([, field = '', type = '']) =>
          names.has(type) ? [[field, lowered(type)] as const] : [],
        ),
      ),
    ]),
  );
}

/** Which query a type of Prisma's is part of: its model, and what a relation in it does. */
function inputOf(type: ts.TypeNode | undefined, tree: ts.SourceFile): ModelRead | null {
  const [, model, kind = ''] = (type && PRISMA_INPUT.exec(type.getText(tree))) ?? [];
  return model === undefined ? null : { model: lowered(model), way: /Include|Select/.test(kind) ? 'relation' : 'filter' };
}

const withoutConst = (node: ts.Expression): ts.Expression => (ts.isAsExpression(node) ? node.expression : node);

const isExported = (node: ts.VariableStatement): boolean =>
  node.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword) ?? false;

/** Constants of a file that are objects without a type of Prisma's: they count where they are used. */
export function plainObjects(tree: ts.SourceFile, exportedOnly = false): Map<string, ts.Expression> {
  const declared = tree.statements
    .filter(ts.isVariableStatement)
    .filter((node) => !exportedOnly || isExported(node))
    .flatMap(({ declarationList }) => [...declarationList.declarations]);
  return new Map(
    declared.flatMap(({ name, type, initializer }) =>
      ts.isIdentifier(name) && !type && initializer && ts.isObjectLiteralExpression(withoutConst(initializer))
        ? [[name.text, withoutConst(initializer)] as const]
        : [],
    ),
  );
}

const keyOf = (name: ts.PropertyName): string => (ts.isIdentifier(name) || ts.isStringLiteral(name) ? name.text : '');

/**
 * Models that a file reads, once for each place.
 * @param shared constants that files export, by name
 */
export function modelsRead(
  tree: ts.SourceFile,
  relations: Relations,
  modelOfTable: ReadonlyMap<string, string>,
  shared: ReadonlyMap<string, ts.Expression>,
): ModelRead[] {
  const found: ModelRead[] = [...tree.text.matchAll(RAW_READ)].flatMap(([, table = '']) => {
    const model = modelOfTable.get(table);
    return model === undefined ? [] : [{ model, way: 'sql' }];
  });
  const constants = new Map([...shared, ...plainObjects(tree)]);
  const takers = new Map<string, (ModelRead | null)[]>();

  const walk = (node: ts.Node, { model, way }: ModelRead): void => {
    if (ts.isIdentifier(node)) {
      const constant = constants.get(node.text);
      if (constant) walk(constant, { model, way });
    } else if (ts.isPropertyAssignment(node)) {
      const key = keyOf(node.name);
      const keyed = WAY_OF_KEY[key];
      const other = relations.get(model)?.get(key);
      if (other !== undefined) found.push({ model: other, way });
      if (keyed !== 'none') walk(node.initializer, { model: other ?? model, way: keyed ?? way });
    } else if (!ts.isPropertyAccessExpression(node) && !ts.isTypeNode(node))
      ts.forEachChild(node, (child) => {
        walk(child, { model, way });
      });
  };
  let named = '';
  const visit = (node: ts.Node): void => {
    if (ts.isVariableDeclaration(node)) named = node.name.getText(tree);
    if (ts.isFunctionLike(node)) {
      const inputs = node.parameters.map(({ type }) => inputOf(type, tree));
      if (inputs.some(Boolean)) takers.set(node.name?.getText(tree) ?? named, inputs);
      const answer = inputOf(node.type, tree);
      if (answer && 'body' in node && node.body) walk(node.body, answer);
    }
    if (ts.isSatisfiesExpression(node) || ts.isVariableDeclaration(node)) {
      const input = inputOf(node.type, tree);
      const value = ts.isSatisfiesExpression(node) ? node.expression : node.initializer;
      if (input && value) walk(value, input);
    }
    if (ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression)) {
      const [of, argument] = [node.expression.expression, node.arguments[0]];
      const model = ts.isPropertyAccessExpression(of) ? of.name.text : '';
      if (relations.has(model)) {
        if (READS.test(node.expression.name.text)) found.push({ model, way: 'direct' });
        if (argument) walk(argument, { model, way: 'relation' });
      }
    }
    ts.forEachChild(node, visit);
  };
  const visitCalls = (node: ts.Node): void => {
    if (ts.isCallExpression(node)) {
      const name = ts.isPropertyAccessExpression(node.expression) ? node.expression.name.text : node.expression.getText(tree);
      (takers.get(name) ?? []).forEach((input, index) => {
        const argument = node.arguments[index];
        if (input && argument) walk(argument, input);
      });
    }
    ts.forEachChild(node, visitCalls);
  };
  visit(tree);
  if (takers.size > 0) visitCalls(tree);
  return found;
}
