import { expect, test } from "vitest";
import { laguerreNodes } from "../../../src/core/counts/laguerreNodes.ts";
import { roomPerDay } from "../../../src/core/kits/roomPerDay.ts";
import { usesAtLevels } from "../../../src/core/kits/usesAtLevels.ts";
import { expectWithin } from "../../expectWithin.ts";
import { equalRounds } from "./reprocessed.ts";

const plan = equalRounds([2, 1], [420, 840, 1260], 110);
const levels = (shape: number, sure = [0, 0], of = plan) =>
	usesAtLevels({ ...of, forecast: { shape, sure } });

test("without a forecast, or with a level well known, there is one", () => {
	expect(usesAtLevels(plan)).toEqual([{ at: plan, chance: 1, share: 1 }]);
	expect(levels(1501)).toEqual([{ at: plan, chance: 1, share: 1 }]);
	const none = { ...plan, usesPerDay: [0, 0] };
	expect(levels(5, [0, 0], none)).toEqual([{ at: none, chance: 1, share: 1 }]);
});

test.each([
	[1500, 4],
	[20, 4],
	[19.9, 8],
])("with a level of shape %d there are %d", (shape, count) => {
	const found = levels(shape);
	expect(found).toHaveLength(count);
	expectWithin(
		found.reduce((sum, { chance }) => sum + chance, 0),
		1,
		1e-12,
		"chance",
	);
	expectWithin(
		found.reduce((sum, { share }) => sum + share, 0),
		1,
		1e-12,
		"share",
	);
	for (const { at, chance, share } of found) {
		expectWithin(at.usesPerDay[0] as number, 2 * (at.usesPerDay[1] as number), 1e-12, "uses");
		expectWithin(share, chance * (at.usesPerDay[1] as number), 1e-9, "share");
		expect(at).not.toHaveProperty("forecast");
	}
});

test("uses by a figure of the unit's own do not go with the level", () => {
	for (const { at } of levels(30, [2, 0.25])) {
		expect(at.usesPerDay[0]).toBe(2);
		expect(at.usesPerDay[1]).toBeGreaterThan(0.25);
	}
});

test("a level is followed as far as can be reprocessed", () => {
	const slow = { ...plan, length: { perRound: 0, perKit: 200, loads: [] } };
	const most = 0.95 * roomPerDay(slow);
	const full = { ...slow, usesPerDay: [most - 0.5, most + 1] };
	const found = levels(5, [0, 0], full).map(({ at }) => at.usesPerDay);
	expect(Math.max(...found.map(([first]) => first as number))).toBe(most);
	expect(Math.max(...found.map(([, second]) => second as number))).toBe(most + 1);
});

test("levels that are all more than can be reprocessed are one", () => {
	const slow = { ...plan, length: { perRound: 0, perKit: 200, loads: [] } };
	const most = 0.95 * roomPerDay(slow);
	const found = levels(5, [0, 0], { ...slow, usesPerDay: [most - 0.5, most - 0.5] });
	const [full] = found.filter(({ at }) => at.usesPerDay[0] === most);
	expect(new Set(found.map(({ at }) => at.usesPerDay.join())).size).toBe(found.length);
	expect(found.length).toBeLessThan(8);
	const above = laguerreNodes(5, 8).filter(({ factor }) => factor * (most - 0.5) >= most);
	expect(above.length).toBeGreaterThan(1);
	const chance = above.reduce((sum, { weight }) => sum + weight, 0);
	expectWithin(full?.chance, chance, 1e-12, "chance");
	expect(full?.share).toBeGreaterThan(chance);
	const parts = (part: "chance" | "share") => found.reduce((sum, level) => sum + level[part], 0);
	expectWithin(parts("chance"), 1, 1e-12, "chance");
	expectWithin(parts("share"), 1, 1e-12, "share");
});
