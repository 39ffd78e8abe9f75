import { expect, test } from "vitest";
import { expectEachCalculation } from "./expectEachCalculation.ts";
import { isCalculation } from "./isCalculation.ts";

const modules = import.meta.glob<Record<string, unknown>>("../../src/core/**/*.ts", {
	eager: true,
});
const exported = Object.values(modules).flatMap((module) =>
	Object.values(module).filter(isCalculation),
);
const described = exported.map((c) => [`${c.key}: ${c.label}`, c] as const);

expectEachCalculation(described, 90, "tests/golden/around-examples.json");

test("what can hurt someone is said with the number", () => {
	const cautionOf = (key: string) => exported.find((c) => c.key === key)?.caution ?? "";
	expect(cautionOf("measure_out")).toMatch(/water first.*Never with vinegar/);
	for (const key of ["vinegar_per_descale", "vinegar_litres_expected", "vinegar_litres_set_aside"])
		expect(cautionOf(key)).toMatch(/poisonous gas/);
	expect(cautionOf("kits_needed")).toMatch(/baby cannot wait/);
});
