import { expect, test } from "vitest";
import { momentsOf } from "../../../src/core/counts/moments.ts";
import { type Loads, soaks } from "../../../src/core/rounds/loads.ts";
import type { RoundsOfDay } from "../../../src/core/rounds/roundsOfDay.ts";
import type { Steps } from "../../../src/core/stock/commonStep.ts";
import { momentsOfUse } from "../../../src/core/stock/momentsOfUse.ts";
import { usedOverDays } from "../../../src/core/stock/usedOverDays.ts";
import { expectWithin } from "../../expectWithin.ts";

const none = { perDay: 0, perRound: 0, perLoad: [0], perKit: [0, 0], perDescale: 9 };
const all = { ...none, perDay: 3, perRound: 5, perLoad: [2], perKit: [4, 4] };
const steps: Steps = { size: 0.5, of: (amount) => amount / 0.5, more: 0, most: 1e9 };
const twoMethods: Loads = [...soaks(2), { method: "boiling", kits: 3 }];
const byKind = [
	[0.8, 0, 2.5],
	[0.3, 0, 1.1],
];
const inRounds: RoundsOfDay = {
	kind: "in_rounds",
	starts: [60, 120, 180],
	kits: [1.1, 0, 3.6],
	byKind,
};
const hundreds: RoundsOfDay = { ...inRounds, starts: [60], kits: [400], byKind: [[300], [100]] };
const afterEachUse: RoundsOfDay = {
	kind: "after_each_use",
	kits: [1.1],
	byKind: [[0.8], [0.3]],
};

test.each([
	["rounds alone", { ...none, perRound: 5 }, inRounds, soaks(2)],
	["loads alone", { ...none, perLoad: [2] }, inRounds, soaks(2)],
	["kits that are alike", { ...none, perKit: [4, 4] }, inRounds, soaks(2)],
	["kits that differ", { ...none, perKit: [4, 7] }, inRounds, soaks(2)],
	["all of it, and by the day", all, inRounds, soaks(2)],
	["loads of two methods", { ...all, perLoad: [2, 3.5] }, inRounds, twoMethods],
	["kits that differ, with all of it", { ...all, perKit: [4, 7] }, inRounds, soaks(2)],
	["loads of one method of two", { ...all, perLoad: [0, 3.5] }, inRounds, twoMethods],
	["kits of which the first takes far more", { ...none, perKit: [50, 1] }, inRounds, soaks(2)],
	["hundreds of kits in a round", { ...none, perKit: [4, 4] }, hundreds, soaks(2)],
	["after each use", { ...all, perKit: [4, 7] }, afterEachUse, soaks(2)],
])("as of the amounts one by one: %s", (_what, rates, day, loads) => {
	const found = momentsOfUse({ rates, loads }, steps)(day);
	const used = momentsOf(usedOverDays({ rates, days: [day], loads, descaleEvery: 0 }, steps));
	for (const moment of ["mean", "variance", "third"] as const)
		expectWithin(found[moment], used[moment], 1e-7 * Math.abs(used[moment]), moment);
	expect(found.most).toBeGreaterThanOrEqual(used.most);
});

test("without kits only what goes by the day", () => {
	const day = { ...inRounds, kits: [0, 0, 0], byKind: byKind.map(() => [0, 0, 0]) };
	const found = momentsOfUse({ rates: all, loads: soaks(2) }, steps)(day);
	expect(found).toEqual({ mean: 6, variance: 0, third: 0, most: 6 });
});
