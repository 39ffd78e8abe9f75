import { expect, test } from "vitest";
import { type BoilPolicy, policyKept } from "../../../src/core/water/boilPolicy.ts";

test.each<[BoilPolicy, boolean, BoilPolicy]>([
	["every_round", false, "every_round"],
	["every_round", true, "standing"],
	["standing", true, "standing"],
	["after_use", true, "after_use"],
	["after_use", false, "after_use"],
])("%s, with kits reprocessed after each use %j, is kept as %s", (chosen, afterEachUse, kept) => {
	expect(policyKept(chosen, afterEachUse)).toBe(kept);
});
