import { dpois } from "lib-r-math.js";
import { expect, test } from "vitest";
import { poisson } from "../../../src/core/counts/poisson.ts";
import { addedTogether } from "../../../src/core/stock/addedTogether.ts";
import { descaledTogether } from "../../../src/core/stock/descaledTogether.ts";
import { expectWithin } from "../../expectWithin.ts";

const ALL = Number.POSITIVE_INFINITY;

/** Poisson counts add up to one whose mean is theirs (chances: lib-r-math.js). */
test.each([
	["few, one by one", [2, 3, 2, 0.5], false],
	["many, and some of them alike", [...new Array(20).fill(300), 350, 250, 400, 350], true],
])("%s", (_, means, isTransformed) => {
	const used = means.map((mean) => poisson(mean));
	const idle = used.map(() => 0);
	expect(descaledTogether(0, 1, used, idle, ALL) !== undefined).toBe(isTransformed);
	const mean = means.reduce((sum, each) => sum + each, 0);
	const spread = Math.sqrt(mean);
	for (const most of [ALL, Math.floor(mean + spread)]) {
		const { first, chance } = addedTogether(used, most);
		for (const away of [-3, -1, 0, 1, 3]) {
			const n = Math.round(mean + away * spread);
			const exact = n < 0 || n > most ? 0 : Number(dpois(n, mean));
			expectWithin(chance[n - first] ?? 0, exact, 1e-12, `chance of ${n}`);
		}
	}
});
