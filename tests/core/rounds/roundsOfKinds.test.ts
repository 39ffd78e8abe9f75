import { expect, test } from "vitest";
import type { RoundsOfDay } from "../../../src/core/rounds/roundsOfDay.ts";
import { roundsOfKinds } from "../../../src/core/rounds/roundsOfKinds.ts";
import { answerOf } from "../answerOf.ts";

const day: RoundsOfDay = {
	kind: "in_rounds",
	starts: [420, 1140],
	kits: [3.5, 0.75],
	byKind: [
		[2, 0.5],
		[1, 0.25],
		[0.5, 0],
	],
};
const level = { mean: 6, levelShape: 30, daySpread: 0 };
const forecast = {
	level,
	sure: [
		[0.25, 0.125],
		[0.5, 0],
		[0.125, 0.0625],
	],
};

test("only the kinds that go this way are left, also of what is not by the forecast", () => {
	const ofKinds = [true, false, true];
	const kits = { kits: [2.5, 0.5], byKind: [day.byKind[0], day.byKind[2]] };
	expect(answerOf(roundsOfKinds, { rounds: day, ofKinds })).toEqual({ ...day, ...kits });
	expect(answerOf(roundsOfKinds, { rounds: { ...day, forecast }, ofKinds })).toEqual({
		...day,
		...kits,
		forecast: {
			level,
			sure: [
				[0.25, 0.125],
				[0.125, 0.0625],
			],
		},
	});
});
