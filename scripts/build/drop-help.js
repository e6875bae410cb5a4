import ts from "typescript";

/** What a definition says to readers alone; no cell asks for it. */
const forReaders = new Set(["summary", "notes", "examples", "source"]);

function isDropped(node) {
  if (!ts.isPropertyAssignment(node) || !ts.isIdentifier(node.name)) return false;
  const call = node.parent.parent;
  const isDefinition =
    ts.isCallExpression(call) && ts.isIdentifier(call.expression) && call.expression.text === "defineFunction";
  return node.name.text === "help" || (isDefinition && forReaders.has(node.name.text));
}

/** A loader: the source of a worksheet function without what it says to readers, as every cell waits for this bundle. */
export default function dropHelp(source) {
  const file = ts.createSourceFile(this.resourcePath, source, ts.ScriptTarget.ES2022, true);
  const dropped = [];
  const visit = (node) => {
    if (isDropped(node)) dropped.push(node);
    else ts.forEachChild(node, visit);
  };
  visit(file);
  let rest = source;
  for (const node of dropped.reverse()) {
    const after = /^\s*,/.exec(rest.slice(node.end))?.[0].length ?? 0;
    rest = rest.slice(0, node.getFullStart()) + rest.slice(node.end + after);
  }
  return rest;
}
