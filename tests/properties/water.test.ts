import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { plan } from "../../src/core/plan/plan.ts";
import { boilingOfRound } from "../../src/core/water/boilingOfRound.ts";
import { boilingPoint } from "../../src/core/water/boilingPoint.ts";
import { coolingMinutes } from "../../src/core/water/coolingMinutes.ts";
import { takenFrom } from "../../src/core/water/waterRates.ts";
import { answerOf } from "../core/answerOf.ts";
import { columnOf, contentOf } from "../core/contentOf.ts";
import { unitWith } from "../core/smallUnit.ts";
import { expectWithin } from "../expectWithin.ts";
import { always } from "./workbooks.ts";

const number = (min: number, max: number) =>
	fc.double({ min, max, noNaN: true }).map((x) => Number(x.toFixed(3)));
const whole = (min: number, max: number) => fc.integer({ min, max });

test("higher up water boils cooler", () => {
	fc.assert(
		fc.property(number(-400, 5000), number(1, 500), (altitudeM, climb) => {
			const at = (height: number) => answerOf(boilingPoint, { altitudeM: height });
			const fall = at(altitudeM) - at(altitudeM + climb);
			// About one degree for each 300 m.
			expect(fall).toBeGreaterThan(climb / 330);
			expect(fall).toBeLessThan(climb / 270);
		}),
		always(300),
	);
});

const round = fc.record({
	loads: whole(0, 10),
	bucketsPerLoad: whole(1, 5),
	bucketLitres: number(1, 20),
	solutionLitres: fc.constant(0),
	potLitres: number(1, 50),
	pots: whole(1, 6),
	netKw: number(0.05, 10),
	drawnC: number(5, 100),
	boilingC: number(80, 101),
	holdMinutes: number(0, 30),
	coolMinutes: number(0, 2000),
});
const cooling = fc.record({
	fromC: number(80, 101),
	toC: number(30, 60),
	roomC: number(-10, 29),
	coolingPerHour: number(0.05, 3),
	potLitres: number(0.5, 100),
});

describe("boiling", () => {
	const lit = (inputs: Parameters<typeof boilingOfRound.compute>[0]): number =>
		-answerOf(boilingOfRound, inputs).allMinutes;

	test("heat in the water and in what boils away is what the stove gave, and batches hold the water", () => {
		fc.assert(
			fc.property(round, (inputs) => {
				const b = answerOf(boilingOfRound, inputs);
				const given = inputs.netKw * 60 * (b.heatMinutes + b.batches * b.holdMinutes);
				const away = 2257 * (b.startLitres - b.litres);
				expectWithin(given, b.kj + away, 1e-6 * (1 + given), "kJ");
				const atOnce = inputs.pots * inputs.potLitres;
				expect(b.batches * atOnce).toBeGreaterThanOrEqual(b.litres - 1e-9);
				expect((b.batches - 1) * atOnce).toBeLessThan(b.litres + (b.litres === 0 ? 1 : 0));
			}),
			always(500),
		);
	});

	test("more to boil, a weaker fire, a longer hold or colder water is lit no later", () => {
		fc.assert(
			fc.property(round, (inputs) => {
				const now = lit(inputs);
				for (const change of [
					{ loads: inputs.loads + 1 },
					{ netKw: inputs.netKw / 2, holdMinutes: 0 },
					{ holdMinutes: inputs.holdMinutes + 5 },
					{ drawnC: inputs.drawnC - 5 },
					{ coolMinutes: inputs.coolMinutes + 1 },
				])
					expect(lit({ ...inputs, ...change })).toBeLessThanOrEqual(
						"netKw" in change ? lit({ ...inputs, holdMinutes: 0 }) : now,
					);
			}),
			always(500),
		);
	});
});

test("water cools by the law from minute to minute, and the cooler the later", () => {
	fc.assert(
		fc.property(cooling, (inputs) => {
			const minutes = answerOf(coolingMinutes, inputs);
			const rate = inputs.coolingPerHour * Math.cbrt(10 / inputs.potLitres);
			const then = inputs.roomC + (inputs.fromC - inputs.roomC) * Math.exp((-rate * minutes) / 60);
			expectWithin(then, inputs.toC, 1e-6, "°C");
			expect(answerOf(coolingMinutes, { ...inputs, toC: inputs.toC - 0.5 })).toBeGreaterThan(
				minutes,
			);
			expect(
				answerOf(coolingMinutes, { ...inputs, potLitres: 2 * inputs.potLitres }),
			).toBeGreaterThan(minutes);
		}),
		always(500),
	);
});

test("sources give what is wanted or all they have, in their order", () => {
	const source = fc.record({ source: fc.string(), litres_per_day: fc.option(number(0, 100)) });
	fc.assert(
		fc.property(number(0, 300), fc.array(source, { maxLength: 5 }), (litres, sources) => {
			const { taken, missing } = takenFrom(litres, sources);
			const all = taken.reduce((sum, part) => sum + part.litres, 0);
			expectWithin(all + missing, litres, 1e-9, "L");
			const most = sources.reduce(
				(sum, s) => sum + (s.litres_per_day ?? Number.POSITIVE_INFINITY),
				0,
			);
			expectWithin(missing, Math.max(0, litres - most), 1e-9, "L");
		}),
		always(300),
	);
});

test("water set aside covers what is expected at even odds or better, and containers hold it", () => {
	const unit = fc.record({
		births_per_day: number(0, 40),
		plan_confidence: fc.constantFrom(0.9, 0.99),
		water_container_litres: number(1, 50),
		boil_hold_minutes: whole(0, 20),
		descale_every_rounds: whole(0, 9),
		solution_made: fc.constantFrom("each_round", "each_day"),
		reprocessing: fc.constantFrom("in_rounds", "after_each_use"),
	});
	fc.assert(
		fc.property(unit, (settings) => {
			const made = plan(unitWith({ heat_kw: 2, plan_days: 2, workers_per_round: 20, ...settings }));
			for (const [litres, containers] of contentOf(
				made,
				"water.csv",
				"litres_set_aside",
				"containers",
			)) {
				const held = Number(containers) * settings.water_container_litres;
				expect(held).toBeGreaterThanOrEqual(Number(litres) - 1e-9);
				expect(held - settings.water_container_litres).toBeLessThan(Number(litres) || 1);
			}
			const higher = plan(
				unitWith({
					heat_kw: 2,
					plan_days: 2,
					workers_per_round: 20,
					...settings,
					plan_confidence: 0.999,
				}),
			);
			columnOf(higher, "water.csv", "litres_set_aside").forEach((litres, day) => {
				// The step of awkward fractions differs a little.
				const lower = Number(columnOf(made, "water.csv", "litres_set_aside")[day]);
				expect(Number(litres)).toBeGreaterThanOrEqual(lower * (1 - 1e-3));
			});
		}),
		always(40),
	);
}, 60_000);
