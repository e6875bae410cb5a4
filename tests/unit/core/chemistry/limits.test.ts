import { describe, expect, it } from "vitest";

import { acidToReach } from "../../../../src/core/chemistry/acid-to-reach.ts";
import { composition } from "../../../../src/core/chemistry/composition.ts";
import { phOf } from "../../../../src/core/chemistry/ph-of.ts";
import { DomainError } from "../../../../src/core/limits/domain-error.ts";
import { kelvin, ph } from "../../../../src/core/units/quantity.ts";

const lye = composition({ sodium: 0.01 });

describe("the chemistry refuses aloud", () => {
  it.each([Number.NaN, Number.POSITIVE_INFINITY, 0, 272, 360])("a temperature of %s kelvin", (temperature) => {
    expect(() => phOf(lye, kelvin(temperature))).toThrow(DomainError);
    expect(() => phOf(lye, kelvin(temperature))).toThrow(/Temperature .* 0 to 80 degrees Celsius/);
  });

  it.each([Number.NaN, -1e-9, 2.01, Number.POSITIVE_INFINITY])(
    "a total of %s mol/kg, naming the component",
    (total) => {
      expect(() => phOf(composition({ silicate: total }), kelvin(298.15))).toThrow(/silicate .* 0 to 2/);
    },
  );

  it.each([Number.NaN, -0.1, 14.6])("a target of pH %s, naming the argument", (target) => {
    expect(() => acidToReach(lye, kelvin(298.15), ph(target))).toThrow(/Target pH .* 0 to 14.5/);
  });
});
