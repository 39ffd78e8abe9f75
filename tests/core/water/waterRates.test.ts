import { describe, expect, test } from "vitest";
import { soaks } from "../../../src/core/rounds/loads.ts";
import { takenFrom, waterRates } from "../../../src/core/water/waterRates.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf } from "../answerOf.ts";

type Inputs = Parameters<typeof waterRates.compute>[0];
const unit: Inputs = {
	soapyLitres: 5,
	plainRinseLitres: 4,
	solutionLitres: 5.5,
	solutionMade: "each_round",
	wardLitres: 20,
	bucketsPerLoad: 3,
	bucketLitres: 10,
	litresOnFire: 20,
	netKw: 1,
	holdMinutes: 20,
	descaleBathLitres: 2,
	vinegarLitres: 1,
	descaleRinseLitres: 6,
	kinds: 2,
	loads: [...soaks(3), { method: "boiling", kits: 2 }, { method: "steam", kits: 3 }],
	boilLitres: 4,
	boilMinutes: 10,
	steamLitres: 1,
	steamMinutes: 30,
};
const rates = (change: Partial<Inputs> = {}) => answerOf(waterRates, { ...unit, ...change });

describe("where a day's water goes", () => {
	test.each([
		["a day: the ward's other solution", {}, "perDay", 20],
		[
			"a day: no more where the kits' is made once a day",
			{ solutionMade: "each_day" },
			"perDay",
			20,
		],
		["a round: soap, rinse and solution", {}, "perRound", 14.5],
		["a round without its solution", { solutionMade: "each_day" }, "perRound", 9],
		["a load: buckets, and what boils away of two batches", {}, "perLoad", 30 + 2400 / 2257],
		["a load in one batch", { litresOnFire: 30 }, "perLoad", 30 + 1200 / 2257],
		["a load that is not held", { holdMinutes: 0 }, "perLoad", 30],
		["a descaling: the bath less its vinegar, and the rinse", {}, "perDescale", 7],
		["a descaling in neat vinegar: only the rinse", { vinegarLitres: 2 }, "perDescale", 6],
		["vinegar never takes water away", { vinegarLitres: 4 }, "perDescale", 6],
	] as const)("%s", (_what, change, rate, litres) => {
		const [first] = [rates(change)[rate]].flat();
		expectWithin(first as number, litres, 1e-12, "L");
	});

	test("a load that is boiled or steamed: its own water, and what boils away", () => {
		const [, boiled, steamed] = rates().perLoad;
		expectWithin(boiled as number, 4 + 600 / 2257, 1e-12, "L");
		expectWithin(steamed as number, 1 + 1800 / 2257, 1e-12, "L");
	});

	test("nothing goes by the kit, of whatever kind", () => {
		expect(rates().perKit).toEqual([0, 0]);
		expect(rates({ kinds: 1 }).perKit).toEqual([0]);
	});
});

describe("sources in their order", () => {
	const tank = { source: "tank", litres_per_day: 30 };
	const well = { source: "well", litres_per_day: 50 };
	const mains = { source: "mains", litres_per_day: null };
	test.each([
		["the first is enough", 20, [tank, well], { tank: 20 }, 0],
		["the first just enough", 30, [tank, well], { tank: 30 }, 0],
		["the first not enough", 45, [tank, well], { tank: 30, well: 15 }, 0],
		["the other way about", 45, [well, tank], { well: 45 }, 0],
		["both not enough", 100, [tank, well], { tank: 30, well: 50 }, 20],
		["one that gives as much as is wanted", 100, [tank, mains, well], { tank: 30, mains: 70 }, 0],
		["one that is dry", 10, [{ ...tank, litres_per_day: 0 }, well], { well: 10 }, 0],
		["no source", 10, [], {}, 10],
		["no water wanted", 0, [tank], {}, 0],
	])("%s", (_what, litres, sources, taken, missing) => {
		const result = takenFrom(litres, sources);
		expect(Object.fromEntries(result.taken.map((part) => [part.source, part.litres]))).toEqual(
			taken,
		);
		expect(result.missing).toBe(missing);
	});
});
