/** Shapes that a submission has on its way to the record: exported types that hold what was handed in. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

/** What a submission consists of, under the names that its shapes have for it. */
const PARTS = new Set(['content', 'specimens', 'record']);
/** What is read back of the record comes after it; a trace is no submission. */
const BESIDE_THE_WAY = /\/(views|traces)\/|read-model\.ts$/;
/** What the parser holds of a file, until it has made a submission of it, is its own: of its room counts what another imports. */
const PARSER = /\/intake\//;

interface File {
  readonly path: string;
  readonly tree: ts.SourceFile;
}

const nameOf = (name: ts.PropertyName | ts.BindingName | undefined): string => (name && ts.isIdentifier(name) ? name.text : '');
const isExported = (node: ts.InterfaceDeclaration | ts.TypeAliasDeclaration): boolean =>
  node.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword) ?? false;

/** Names of members that a type has, and of types that it builds on. */
function madeOf(tree: ts.SourceFile, type: ts.Node): string[] {
  if (ts.isInterfaceDeclaration(type))
    return [
      ...type.members.map((member) => nameOf(member.name)),
      ...(type.heritageClauses ?? []).flatMap(({ types }) => types.map(({ expression }) => expression.getText(tree))),
    ];
  if (ts.isTypeLiteralNode(type)) return type.members.map((member) => nameOf(member.name));
  if (ts.isIntersectionTypeNode(type)) return type.types.flatMap((one) => madeOf(tree, one));
  if (!ts.isTypeReferenceNode(type)) return [];
  const [argument] = type.typeArguments ?? [];
  const answered = argument && ts.isTypeQueryNode(argument) ? answerOf(tree, argument.exprName.getText(tree)) : [];
  return [type.typeName.getText(tree), ...answered, ...(type.typeArguments ?? []).flatMap((one) => madeOf(tree, one))];
}

/** Names of what a function of the file answers with, where that is an object. */
function answerOf(tree: ts.SourceFile, name: string): string[] {
  const declared = tree.statements.filter(ts.isVariableStatement).flatMap(({ declarationList }) => [...declarationList.declarations]);
  const made = declared.find((one) => nameOf(one.name) === name)?.initializer;
  const body = made && ts.isArrowFunction(made) ? made.body : undefined;
  const object = body && ts.isParenthesizedExpression(body) ? body.expression : body;
  return object && ts.isObjectLiteralExpression(object) ? object.properties.map((property) => nameOf(property.name)) : [];
}

const roomOf = (path: string): string => path.split('/').slice(0, -1).join('/');

/** @param folder the feature, in which every folder is a room */
export function shapesOf(folder: string): string[] {
  const files: File[] = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(folder, name))
    .filter((path) => !BESIDE_THE_WAY.test(path))
    .map((path) => ({ path, tree: ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest) }));
  const types = files.flatMap(({ path, tree }) =>
    tree.statements
      .filter((node) => ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node))
      .filter(isExported)
      .map((node) => ({ name: node.name.text, path, parts: madeOf(tree, ts.isInterfaceDeclaration(node) ? node : node.type) })),
  );
  const shapes = new Set<string>();
  for (let before = -1; before < shapes.size;) {
    before = shapes.size;
    for (const { name, parts } of types) if (parts.some((part) => PARTS.has(part) || shapes.has(part))) shapes.add(name);
  }
  const isHandedOn = (name: string, home: string): boolean =>
    files.some(({ path, tree }) => roomOf(path) !== roomOf(home) && new RegExp(`import [^;]*\\b${name}\\b[^;]* from`).test(tree.text));
  return types
    .filter(({ name, path }) => shapes.has(name) && (!PARSER.test(path) || isHandedOn(name, path)))
    .map(({ name }) => name)
    .sort();
}
