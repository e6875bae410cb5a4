/**
 * A loader: a definition of a worksheet function as readers get it. What it imports of the definitions is asked for
 * with the same query, so that these modules stand beside those without help.
 */
export default function keepHelp(source) {
  return source.replaceAll(/(from "\.[^"]*\/)([^"/]+\.ts)"/g, (whole, path, name) =>
    path.includes("/src/") ? whole : `${path}${name}?help"`,
  );
}
