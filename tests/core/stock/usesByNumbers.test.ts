import { expect, test } from "vitest";
import { soaks } from "../../../src/core/rounds/loads.ts";
import type { RoundsOfDay } from "../../../src/core/rounds/roundsOfDay.ts";
import { usesByNumbers } from "../../../src/core/stock/usesByNumbers.ts";
import { expectWithin } from "../../expectWithin.ts";

const day: RoundsOfDay = {
	kind: "in_rounds",
	starts: [420, 1140],
	kits: [0.3, 0.3],
	byKind: [[0.3, 0.3]],
};
const days = Array.from({ length: 7 }, () => day);
const loads = soaks(3);

const used = (perDay: number) => {
	const rates = { perDay, perRound: 3.7, perLoad: [5.3], perKit: [7.9], perDescale: 0 };
	return usesByNumbers({ rates, days, loads, descaleEvery: 0 });
};

test.each([0.5, 0.95, 0.999])(
	"what is used every day comes to the rest, seven times, at %d",
	(confidence) => {
		const [without, with2] = [used(0), used(2)];
		if (!without || !with2) throw new Error("these numbers are few");
		const more = with2.enough(confidence) * with2.size - without.enough(confidence) * without.size;
		expectWithin(more, 7 * 2, 1e-9, "in the item's measure");
	},
);

test("at the average every round, load and kit is used once", () => {
	const { size, ways } = used(2) ?? expect.fail("these numbers are few");
	const { chance, places } = ways();
	const mean = chance.reduce((sum, each, at) => sum + each * (places[at] as number) * size, 0);
	// Kits are Poisson; a round runs with one or more of them, three in a load.
	const none = Math.exp(-0.3);
	const most = 40;
	let term = none;
	let ofLoads = 0;
	for (let kits = 1; kits < most; kits++) {
		term *= 0.3 / kits;
		ofLoads += term * Math.ceil(kits / 3);
	}
	const result = 7 * 2 + 14 * (3.7 * (1 - none) + 5.3 * ofLoads + 7.9 * 0.3);
	expectWithin(mean, result, 1e-6 * result, "in the item's measure");
});

const level = { mean: 0.6, levelShape: 20, daySpread: 0 };
const ofOne: RoundsOfDay = { kind: "after_each_use", kits: [0.6], byKind: [[0.6]] };

test.each([
	["kits of which each is a round of its own", 7, ofOne],
	["days whose total is found by its moments", 40, { ...day, forecast: { level, sure: [[0, 0]] } }],
] as const)("nothing for %s", (_what, count, one) => {
	const rates = { perDay: 0, perRound: 3.7, perLoad: [5.3], perKit: [7.9], perDescale: 0 };
	const all = Array.from({ length: count }, () => one);
	expect(usesByNumbers({ rates, days: all, loads, descaleEvery: 0 })).toBeUndefined();
});
