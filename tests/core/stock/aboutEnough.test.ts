import { expect, test } from "vitest";
import { soaks } from "../../../src/core/rounds/loads.ts";
import type { RoundsOfDay } from "../../../src/core/rounds/roundsOfDay.ts";
import { aboutEnough } from "../../../src/core/stock/aboutEnough.ts";
import { useSetAside } from "../../../src/core/stock/useSetAside.ts";
import { answerOf } from "../answerOf.ts";

const none = { perDay: 0, perRound: 0, perLoad: [0], perKit: [0, 0], perDescale: 0 };
const known: RoundsOfDay = {
	kind: "in_rounds",
	starts: [0, 60],
	kits: [1.5, 2],
	byKind: [
		[1, 1.5],
		[0.5, 0.5],
	],
};
const level = { mean: 3.5, levelShape: 3, daySpread: 0 };
const sure = [
	[0, 0],
	[0.1, 0],
];
const forecast: RoundsOfDay = { ...known, forecast: { level, sure } };
const mixed = Array.from({ length: 9 }, (_, at) => (at % 2 === 0 ? forecast : known));
const all = { perDay: 5, perRound: 30, perLoad: [25], perKit: [10, 14], perDescale: 40 };

test.each([
	["kits", { ...none, perKit: [10, 14] }, known],
	["rounds, loads, kits and descalings", all, known],
	["kits, at a level that is not known", { ...none, perKit: [10, 14] }, forecast],
	["all of it, at a level that is not known", all, forecast],
	["all of it, of days with a figure of their own among others", all, mixed],
] as const)("near what is set aside: %s", (_what, rates, of) => {
	const days = "length" in of ? of : new Array<RoundsOfDay>(9).fill(of);
	for (const confidence of [0.5, 0.8, 0.95, 0.999]) {
		const use = { rates, days, loads: soaks(2), descaleEvery: 3 };
		const part = aboutEnough(use, confidence) / answerOf(useSetAside, { ...use, confidence });
		expect(part, `for ${confidence}`).toBeGreaterThan(0.93);
		expect(part, `for ${confidence}`).toBeLessThan(1.07);
	}
});

test("where nothing is used nothing is enough", () => {
	const use = { rates: none, days: [known], loads: soaks(2), descaleEvery: 3 };
	expect(aboutEnough(use, 0.95)).toBe(0);
});
