import { test } from "vitest";
import { chanceAtMost } from "../../../src/core/counts/counts.ts";
import { poisson } from "../../../src/core/counts/poisson.ts";
import { spread } from "../../../src/core/counts/spread.ts";
import { plus } from "../../../src/core/counts/sumOf.ts";
import { compoundUse } from "../../../src/core/stock/compoundUse.ts";
import { expectWithin } from "../../expectWithin.ts";

// At a level that is known, kits that go with it and kits that do not are Poisson numbers of one sum.
test.each([
	["by their own use", 0],
	["and by the group of three", 4],
])("where the level is known all kits of one use are one Poisson number: %s", (_what, perGroup) => {
	const kits = [
		{ use: 2, byLevel: 0.7, sure: 0.4 },
		{ use: 5, byLevel: 0.3, sure: 0 },
	];
	const one = kits.map(({ use, byLevel, sure }) => ({ use, byLevel: 0, sure: byLevel + sure }));
	const found = compoundUse(Number.POSITIVE_INFINITY, kits, perGroup, 3, 500);
	const [twos, fives] = [spread(poisson(1.1), (n) => 2 * n), spread(poisson(0.3), (n) => 5 * n)];
	const wanted =
		perGroup === 0
			? plus(twos, fives)
			: compoundUse(Number.POSITIVE_INFINITY, one, perGroup, 3, 500);
	for (let use = 0; use < 40; use++)
		expectWithin(chanceAtMost(found, use), chanceAtMost(wanted, use), 1e-12, "chance");
});
