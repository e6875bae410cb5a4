import { BaseSequencer, type TestSpecification } from "vitest/node";

/** A worker that comes to a long file last keeps the others waiting, so the named files come first, in this order. */
export function slowFirst(...names: readonly string[]): typeof BaseSequencer {
  const rank = ({ moduleId }: TestSpecification): number => {
    const found = names.findIndex((name) => moduleId.endsWith(`/${name}.test.ts`));
    return found < 0 ? names.length : found;
  };
  return class extends BaseSequencer {
    override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
      const sorted = await super.sort(files);
      return sorted.sort((a, b) => rank(a) - rank(b));
    }
  };
}
