/**
 * Every sentence that the program answers a mistake with, read off its source: `npm run error-texts` prints them by the file that says
 * them, to be read as the person who gets them; a test holds each to a few rules. What stands for a value is written as ‹value›.
 */
import { globSync, readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import ts from 'typescript';

export interface ErrorText {
  readonly file: string;
  readonly line: number;
  /** The code beside it; where it has none, how it is given. */
  readonly code: string;
  readonly text: string;
}

/** What carries a sentence to whoever made a mistake. */
const FIELDS = new Set(['detail', 'explains', 'title', 'message', 'remedy', 'forTester', 'says', 'words', 'expected']);
const SAYERS =
  /^(fault|tell|notOnRecord|onRecordAlready|unknownReference|report|refuse|faultAt|strangers|Problem|MeasurementError|broken)$/;
const NOT_SAID = new Set([
  'Error',
  'TypeError',
  'RangeError',
  'log',
  'warn',
  'error',
  'describe',
  'Endpoint',
  'write',
  '$queryRaw',
  '$executeRaw',
]);

const isText = (node: ts.Node): node is ts.StringLiteralLike | ts.TemplateExpression =>
  ts.isStringLiteralLike(node) || ts.isTemplateExpression(node);

const textOf = (node: ts.StringLiteralLike | ts.TemplateExpression): string =>
  ts.isStringLiteralLike(node)
    ? node.text
    : node.head.text + node.templateSpans.map(({ expression, literal }) => `‹${shortOf(expression)}›${literal.text}`).join('');

const shortOf = (expression: ts.Expression): string => {
  const text = expression.getText().replaceAll(/\s+/g, ' ');
  return text.length <= 24 ? text : 'value';
};

/** Name of what a text is handed to: a field, a variable, a function, a class. */
function carrierOf(node: ts.Node): string {
  for (let at = node.parent; !ts.isSourceFile(at); at = at.parent) {
    if (ts.isPropertyAssignment(at) || ts.isVariableDeclaration(at)) return at.name.getText();
    if (ts.isCallExpression(at) || ts.isNewExpression(at)) {
      const name = ts.isPropertyAccessExpression(at.expression) ? at.expression.name.text : at.expression.getText();
      if (!/^(join|map|push|replace|includes|test|filter)$/.test(name)) return name;
    }
    if (ts.isTaggedTemplateExpression(at)) return at.tag.getText().split('.').at(-1) ?? '';
    if (ts.isFunctionDeclaration(at) || ts.isMethodDeclaration(at)) return at.name?.getText() ?? '';
  }
  return '';
}

/** The code that stands beside a text, in the object or among the arguments that hold it. */
function codeBeside(node: ts.Node): string {
  for (let at = node.parent, depth = 0; !ts.isSourceFile(at) && depth < 6; at = at.parent, depth++) {
    if (ts.isObjectLiteralExpression(at)) {
      for (const property of at.properties)
        if (ts.isPropertyAssignment(property) && property.name.getText() === 'code' && isText(property.initializer))
          return textOf(property.initializer);
      if (ts.isPropertyAssignment(at.parent) && ts.isStringLiteral(at.parent.name)) return at.parent.name.text;
    }
    if (ts.isCallExpression(at) || ts.isNewExpression(at)) {
      const code = at.arguments?.find((one) => ts.isStringLiteral(one) && /^[a-z]+([_/-][a-z-]+)*$/.test(one.text) && one.text.length > 3);
      if (code && isText(code)) return textOf(code);
    }
  }
  return '';
}

const isSentence = (text: string): boolean => /[A-Za-z]/.test(text) && text.trim().split(/\s+/).length >= 3;

function textsIn(file: string): ErrorText[] {
  const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
  const found: ErrorText[] = [];
  const visit = (node: ts.Node): void => {
    if (isText(node) && isSentence(textOf(node))) {
      const carrier = carrierOf(node);
      if ((FIELDS.has(carrier) || SAYERS.test(carrier) || /Fault|fault|Words|detail/.test(carrier)) && !NOT_SAID.has(carrier)) {
        const { line } = source.getLineAndCharacterOfPosition(node.getStart());
        found.push({ file, line: line + 1, code: codeBeside(node) || carrier, text: textOf(node) });
      }
    }
    if (!ts.isImportDeclaration(node) && !ts.isDecorator(node)) ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** In the order of the files. */
export const errorTexts = (): ErrorText[] =>
  globSync('api/**/*.ts')
    .filter((file) => !/generated|contract\/documents|reckoning\/documents|openapi\//.test(file))
    .sort()
    .flatMap(textsIn);

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href)
  for (const { file, line, code, text } of errorTexts()) process.stdout.write(`${file}:${line}  [${code}]\n    ${text}\n`);
