import ts from 'typescript';

/** One small change to a source file that a test ought to notice. */
export interface Mutant {
  readonly file: string;
  readonly line: number;
  /** Offsets of the text that is replaced. */
  readonly start: number;
  readonly end: number;
  readonly was: string;
  readonly becomes: string;
}

const SWAPPED: Readonly<Partial<Record<ts.SyntaxKind, string>>> = {
  [ts.SyntaxKind.PlusToken]: '-',
  [ts.SyntaxKind.MinusToken]: '+',
  [ts.SyntaxKind.AsteriskToken]: '/',
  [ts.SyntaxKind.SlashToken]: '*',
  [ts.SyntaxKind.LessThanToken]: '>=',
  [ts.SyntaxKind.GreaterThanToken]: '<=',
  [ts.SyntaxKind.LessThanEqualsToken]: '>',
  [ts.SyntaxKind.GreaterThanEqualsToken]: '<',
  [ts.SyntaxKind.EqualsEqualsEqualsToken]: '!==',
  [ts.SyntaxKind.ExclamationEqualsEqualsToken]: '===',
  [ts.SyntaxKind.AmpersandAmpersandToken]: '||',
  [ts.SyntaxKind.BarBarToken]: '&&',
};

const RENAMED: Readonly<Record<string, string>> = {
  'Math.max': 'Math.min',
  'Math.min': 'Math.max',
  some: 'every',
  every: 'some',
};

/** Every change of these kinds that a file allows: an operator turned round, a number doubled, a bound exchanged. */
export function mutantsOf(file: string, text: string): Mutant[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2023, true);
  const found: Mutant[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isTypeNode(node) || ts.isThrowStatement(node)) return;
    const change = changeOf(node);
    if (change) found.push(mutant(source, change.node, change.becomes));
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

interface Change {
  readonly node: ts.Node;
  readonly becomes: string;
}

function changeOf(node: ts.Node): Change | undefined {
  if (ts.isBinaryExpression(node)) return operatorChange(node);
  if (ts.isNumericLiteral(node)) return numberChange(node);
  if (ts.isPropertyAccessExpression(node) && ts.isCallExpression(node.parent)) return nameChange(node);
  return undefined;
}

/** Text joined by + is not arithmetic; with a text beside it the operator stays. */
function operatorChange({ left, operatorToken, right }: ts.BinaryExpression): Change | undefined {
  const becomes = SWAPPED[operatorToken.kind];
  if (
    becomes === undefined ||
    [left, right].some((side) => ts.isStringLiteralLike(side) || ts.isTemplateExpression(side))
  )
    return undefined;
  return { node: operatorToken, becomes };
}

/** 0 becomes 1, everything else is doubled and raised; places in lists and codes of tables are left alone. */
function numberChange(node: ts.NumericLiteral): Change | undefined {
  if (ts.isElementAccessExpression(node.parent) || ts.isEnumMember(node.parent)) return undefined;
  return { node, becomes: String(2 * Number(node.text) + 1) };
}

function nameChange(node: ts.PropertyAccessExpression): Change | undefined {
  const whole = node.getText();
  const both = RENAMED[whole];
  if (both !== undefined) return { node, becomes: both };
  const becomes = RENAMED[node.name.text];
  return becomes === undefined || whole.startsWith('Math.') ? undefined : { node: node.name, becomes };
}

function mutant(source: ts.SourceFile, node: ts.Node, becomes: string): Mutant {
  const start = node.getStart();
  return {
    file: source.fileName,
    line: source.getLineAndCharacterOfPosition(start).line + 1,
    start,
    end: node.getEnd(),
    was: node.getText(),
    becomes,
  };
}
