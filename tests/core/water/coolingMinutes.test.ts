import { describe, expect, test } from "vitest";
import {
	coolingMinutes,
	rateFromReading,
	rateOfPot,
} from "../../../src/core/water/coolingMinutes.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf, refusalOf } from "../answerOf.ts";

const pot = { fromC: 100, toC: 37, roomC: 25, coolingPerHour: 0.25, potLitres: 10 };

test.each([
	["to 37 °C", {}, 7.33, 0.005],
	["to 30 °C", { toC: 30 }, 10.83, 0.005],
	["twice as fast, half the time", { coolingPerHour: 0.5 }, 7.33 / 2, 0.0025],
	["a pot eight times as large, twice the time", { potLitres: 80 }, 2 * 7.33, 0.01],
	["a pot an eighth as large, half the time", { potLitres: 1.25 }, 7.33 / 2, 0.0025],
	["from 90 °C, high up", { fromC: 90 }, 4 * Math.log(65 / 12), 1e-9],
	["in a cold room", { roomC: 0 }, 4 * Math.log(100 / 37), 1e-9],
	["no warmer than wanted: at once", { fromC: 37 }, 0, 0],
	["no warmer than wanted, in a hot room: at once", { fromC: 37, roomC: 40 }, 0, 0],
])("%s: hours", (_what, change, hours, tolerance) => {
	expectWithin(answerOf(coolingMinutes, { ...pot, ...change }) / 60, hours, tolerance, "h");
});

describe("water does not get colder than its room", () => {
	test.each([37, 40, 55])("a room of %d °C is a problem, in words", (roomC) => {
		expect(refusalOf(coolingMinutes, { ...pot, roomC })).toMatchObject([
			{
				code: "room-too-warm",
				received: `${roomC} °C`,
				allowed: "below 37 °C",
				file: "unit.csv",
				column: "room_c",
				message: expect.stringMatching(/does not cool to 37 °C/),
			},
		]);
	});

	test("a room just cooler takes long, and has an answer", () => {
		expect(answerOf(coolingMinutes, { ...pot, roomC: 36.9 })).toBeGreaterThan(24 * 60);
	});
});

describe("the unit's own reading of a pot", () => {
	const reading = { firstC: 96, secondC: 60, roomC: 25, hours: 2, potLitres: 10 };

	test.each([1, 10, 25])("of %d L gives back the time it took", (potLitres) => {
		const coolingPerHour = answerOf(rateFromReading, { ...reading, potLitres });
		const minutes = answerOf(coolingMinutes, {
			fromC: 96,
			toC: 60,
			roomC: 25,
			coolingPerHour,
			potLitres,
		});
		expectWithin(minutes, 120, 1e-9, "min");
		expectWithin(rateOfPot(coolingPerHour, potLitres), Math.log(71 / 35) / 2, 1e-12, "per h");
	});

	test.each([
		["warming up", { firstC: 60, secondC: 96 }],
		["not changing", { secondC: 96 }],
		["colder than its room", { secondC: 20 }],
		["as cold as its room", { secondC: 25 }],
	])("%s is no cooling", (_what, change) => {
		expect(refusalOf(rateFromReading, { ...reading, ...change }).map((p) => p.code)).toEqual([
			"reading-not-cooling",
		]);
	});

	test("in no time at all is refused", () => {
		expect(refusalOf(rateFromReading, { ...reading, hours: 0 }).map((p) => p.code)).toEqual([
			"outside-limits",
		]);
	});
});
