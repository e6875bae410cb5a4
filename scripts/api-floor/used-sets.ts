/** The requirement sets that Microsoft's types name beside each member of Office.js that a file uses. */
import ts from "typescript";

/** One use of a member: any one of `sets` is enough for it. */
export interface UsedMember {
  readonly member: string;
  /** File and line. */
  readonly at: string;
  readonly sets: readonly RequiredSet[];
}

export interface RequiredSet {
  readonly name: string;
  readonly version: string;
}

const officeTypes = /@types[\\/](?:office-js|custom-functions-runtime)[\\/]/;

/** "[Api set: ExcelApi 1.9]" in the application types; "**Requirement set**: {@link … | SharedRuntime 1.1}" or a list of links in the common ones. */
const remarks = [/\[Api set:\s*(\w+)\s+(\d+\.\d+)/g, /requirement-sets\/[^|}]*\|\s*(\w+)(?:\s+(\d+\.\d+))?\s*\}/g];

function setsIn(text: string): readonly RequiredSet[] {
  return remarks.flatMap((remark) =>
    [...text.matchAll(remark)].map(([, name = "", version = "1.1"]) => ({ name, version })),
  );
}

/** The comment above a declaration; where it has none, that of what the declaration stands in. */
function remarkOf(declaration: ts.Node): readonly RequiredSet[] {
  const own = setsIn(
    declaration.getSourceFile().text.slice(declaration.getFullStart(), declaration.getStart(undefined, false)),
  );
  const { parent } = declaration as { readonly parent: ts.Node | undefined };
  const inherits =
    parent !== undefined &&
    (ts.isInterfaceDeclaration(parent) || ts.isClassDeclaration(parent) || ts.isEnumDeclaration(parent));
  return own.length > 0 || !inherits ? own : remarkOf(parent);
}

class Reader {
  readonly used: UsedMember[] = [];
  private readonly checker: ts.TypeChecker;
  private readonly file: ts.SourceFile;

  constructor(checker: ts.TypeChecker, file: ts.SourceFile) {
    this.checker = checker;
    this.file = file;
  }

  private note(symbol: ts.Symbol | undefined, node: ts.Node, overload?: ts.SignatureDeclaration): void {
    const declared = (symbol?.declarations ?? []).filter(({ parent }) =>
      officeTypes.test(parent.getSourceFile().fileName),
    );
    const [declaration] = overload === undefined || !declared.includes(overload) ? declared : [overload];
    if (symbol === undefined || declaration === undefined) return;
    const line = this.file.getLineAndCharacterOfPosition(node.getStart()).line + 1;
    const owner =
      "name" in declaration.parent ? (declaration.parent.name as ts.Identifier | undefined)?.text : undefined;
    this.used.push({
      member: owner === undefined ? symbol.name : `${owner}.${symbol.name}`,
      at: `${this.file.fileName}:${String(line)}`,
      sets: remarkOf(declaration),
    });
  }

  /** Each part of the paths that `load("a,items/b")` names. */
  private notePaths(loaded: ts.Type, paths: string, node: ts.Node): void {
    for (const path of paths.split(",")) {
      let type = loaded;
      for (const part of path.trim().split("/")) {
        const symbol = type.getProperty(part);
        this.note(symbol, node);
        if (symbol === undefined) break;
        const inside = this.checker.getTypeOfSymbol(symbol);
        type = inside.getNumberIndexType() ?? inside;
      }
    }
  }

  private noteCall(call: ts.CallExpression): void {
    if (!ts.isPropertyAccessExpression(call.expression)) return;
    const { name, expression } = call.expression;
    this.note(
      this.checker.getSymbolAtLocation(name),
      name,
      this.checker.getResolvedSignature(call)?.declaration as ts.SignatureDeclaration | undefined,
    );
    const [first] = call.arguments;
    if (name.text === "load" && first !== undefined && ts.isStringLiteral(first))
      this.notePaths(this.checker.getTypeAtLocation(expression), first.text, first);
  }

  visit(node: ts.Node): void {
    if (ts.isCallExpression(node)) this.noteCall(node);
    else if (
      ts.isPropertyAccessExpression(node) &&
      !(ts.isCallExpression(node.parent) && node.parent.expression === node)
    )
      this.note(this.checker.getSymbolAtLocation(node.name), node.name);
    else if (ts.isPropertyAssignment(node) || ts.isShorthandPropertyAssignment(node))
      this.note(this.checker.getContextualType(node.parent)?.getProperty(node.name.getText()), node.name);
    ts.forEachChild(node, (child) => {
      this.visit(child);
    });
  }
}

/** Every use of a member of Office.js in these files that names a set, in their order. */
export function usedMembers(files: readonly string[]): readonly UsedMember[] {
  const program = ts.createProgram(files, {
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    allowImportingTsExtensions: true,
    strict: true,
    skipLibCheck: true,
    noEmit: true,
    types: ["office-js", "custom-functions-runtime"],
  });
  const checker = program.getTypeChecker();
  return files.flatMap((name) => {
    const file = program.getSourceFile(name);
    if (file === undefined) throw new Error(`There is no ${name}.`);
    const reader = new Reader(checker, file);
    reader.visit(file);
    return reader.used.filter(({ sets }) => sets.length > 0);
  });
}
