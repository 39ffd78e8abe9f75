import fc from "fast-check";
import { expect, test } from "vitest";
import { isDoneFor, soaks } from "../../src/core/rounds/loads.ts";
import { mixingSteps } from "../../src/core/rounds/mixingSteps.ts";
import { roundMinutes } from "../../src/core/rounds/roundMinutes.ts";
import type { Step } from "../../src/core/rounds/step.ts";
import {
	DESCALE_STEP,
	type PlannedRound,
	RINSE_STEP,
	timedSteps,
} from "../../src/core/rounds/timedSteps.ts";
import { answerOf } from "../core/answerOf.ts";
import { expectWithin } from "../expectWithin.ts";
import { always } from "./workbooks.ts";

const whole = (min: number, max: number) => fc.integer({ min, max });
const grid: fc.Arbitrary<Step[]> = fc.array(
	fc.record({
		step: fc.constantFrom("soak", "wash", "rinse", "dry", DESCALE_STEP),
		basis: fc.constantFrom("round" as const, "kit" as const, "load" as const),
		minutes: whole(0, 90),
		hands_on: fc.constantFrom("yes" as const, "no" as const),
		method: fc.constantFrom("chlorine" as const, "boiling" as const, null),
	}),
	{ maxLength: 8 },
);
const descale = fc.record({ minutes: whole(1, 60), rinseMinutes: whole(1, 60) });
const round: fc.Arbitrary<PlannedRound> = fc.record({
	start: whole(0, 1439),
	kits: whole(1, 20),
	workers: whole(1, 5),
	loads: whole(1, 6).map(soaks),
	descale: fc.option(descale),
	settleMinutes: whole(0, 90),
});

test("rinse and drain always stands between vinegar and chlorine", () => {
	fc.assert(
		fc.property(grid, round, descale, (steps, planned, due) => {
			const plain = steps.map((s) => ({ ...s, step: `my ${s.step}` }));
			const timed = timedSteps(plain, { ...planned, descale: due });
			const bath = timed.findIndex((s) => s.step === DESCALE_STEP);
			expect(timed.filter((s) => s.step === DESCALE_STEP || s.step === RINSE_STEP)).toHaveLength(2);
			expect(timed[bath + 1]?.step).toBe(RINSE_STEP);
			expect(timed[bath + 1]?.startsAt).toBe(timed[bath]?.endsAt);
			expect(timed.slice(0, bath + 2).filter((s) => s.load > 0)).toEqual([]);
			const mixed = mixingSteps(plain).map((s) => s.step);
			// Names may be alike: what is mixed lies after the vinegar, as often as it is mixed at all.
			const opened = timed
				.slice(bath + 2)
				.filter((s) => mixed.some((name) => s.step.startsWith(name)));
			expect(opened.length).toBeGreaterThanOrEqual(mixed.length);
			if (!steps.some((s) => s.basis === "load")) expect(bath).toBe(0);
			expectWithin(
				(timed[bath + 1]?.endsAt ?? 0) - (timed[bath]?.startsAt ?? 0),
				due.minutes + due.rinseMinutes,
				1e-9,
				"min",
			);
		}),
		always(500),
	);
});

test("no minute is lost between steps, and a round takes the minutes the plan counts with", () => {
	fc.assert(
		fc.property(grid, round, (steps, planned) => {
			const timed = timedSteps(steps, { ...planned, settleMinutes: 0 });
			let clock = planned.start;
			for (const s of timed) {
				expect(s.startsAt).toBe(clock);
				clock = s.endsAt;
			}
			const own = planned.descale ? planned.descale.minutes + planned.descale.rinseMinutes : 0;
			const counted = steps.length === 0 ? 0 : answerOf(roundMinutes, { steps, ...planned });
			expectWithin(clock - planned.start, counted + own, 1e-9, "min");
		}),
		always(500),
	);
});

test("what must settle has settled when the first load goes in, and no step is before midnight", () => {
	fc.assert(
		fc.property(grid, round, (steps, planned) => {
			const timed = timedSteps(steps, planned);
			for (const { startsAt } of timed) expect(startsAt).toBeGreaterThanOrEqual(0);
			if (mixingSteps(steps).length === 0 || planned.settleMinutes === 0) return;
			const mixed = timed.findIndex(({ step }) => step.includes("; let it settle"));
			const soaks = timed.slice(mixed).find(({ load }) => load > 0)?.startsAt ?? Number.NaN;
			const stood = soaks - (timed[mixed]?.endsAt ?? Number.NaN);
			expect(stood).toBeGreaterThanOrEqual(planned.settleMinutes - 1e-9);
		}),
		always(500),
	);
});

test("every kit goes through every step counted by load exactly once", () => {
	fc.assert(
		fc.property(grid, round, (steps, planned) => {
			const timed = timedSteps(steps, planned);
			const byLoad = planned.loads.flatMap((size) =>
				steps.filter((s) => s.basis === "load" && isDoneFor(size, s.method)),
			).length;
			const kits = timed.reduce((sum, s) => sum + (s.load > 0 ? s.kits : 0), 0);
			expect(kits).toBe(byLoad * planned.kits);
			for (const s of timed)
				expect(s.load === 0 || s.kits <= (planned.loads[0]?.kits ?? 0)).toBe(true);
		}),
		always(500),
	);
});
