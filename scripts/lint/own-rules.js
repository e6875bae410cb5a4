/** Rules of this project alone, in the form that the linter takes. */
const noFixedRunCount = {
  create: (context) => ({
    Property(node) {
      if (node.key.name === "numRuns")
        context.report({ node, message: "Write runs(60) of tests/setup: a soak runs it more often." });
    },
  }),
};

export default { meta: { name: "own" }, rules: { "no-fixed-run-count": noFixedRunCount } };
