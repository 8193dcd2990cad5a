/** Where a feature reads another's tables by Prisma's `include` and `select`, rather than asking its read model. */
import ts from 'typescript';

/** Prisma's name of a model → its fields that are relations → the model that each leads to. */
export type Relations = ReadonlyMap<string, ReadonlyMap<string, string>>;

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

const nameOf = (property: ts.ObjectLiteralElementLike): string =>
  property.name && ts.isIdentifier(property.name) ? property.name.text : '';

const objectsIn = (node: ts.ObjectLiteralExpression): [string, ts.ObjectLiteralExpression | null][] =>
  node.properties.flatMap((property) =>
    ts.isPropertyAssignment(property)
      ? [[nameOf(property), ts.isObjectLiteralExpression(property.initializer) ? property.initializer : null] as const]
      : [],
  ) as [string, ts.ObjectLiteralExpression | null][];

/** Models that a file reads through a relation, as often as it does. */
export function modelsReadThrough(tree: ts.SourceFile, relations: Relations): string[] {
  const found: string[] = [];
  const fields = (model: string, object: ts.ObjectLiteralExpression): void => {
    for (const [field, inner] of objectsIn(object)) {
      const other = relations.get(model)?.get(field);
      if (other === undefined) continue;
      found.push(other);
      if (inner) query(other, inner);
    }
  };
  const query = (model: string, object: ts.ObjectLiteralExpression): void => {
    for (const [key, inner] of objectsIn(object)) if (inner && (key === 'include' || key === 'select')) fields(model, inner);
  };
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression)) {
      const [of, argument] = [node.expression.expression, node.arguments[0]];
      if (ts.isPropertyAccessExpression(of) && argument && ts.isObjectLiteralExpression(argument)) query(of.name.text, argument);
    }
    if (ts.isSatisfiesExpression(node) && ts.isObjectLiteralExpression(node.expression)) {
      const model = /^Prisma\.(\w+?)(?:Include|Select)$/.exec(node.type.getText(tree))?.[1];
      if (model) fields(lowered(model), node.expression);
    }
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return found;
}
