import { describe, expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { notInTimeCodes } from "../../../../src/core/plan/water/waterNotInTime.ts";
import { columnOf } from "../../contentOf.ts";
import { codesOf, rowsOf } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";
import { wholeProblems } from "../../wholeProblems.ts";

const CODES = [
	"pots-booked-twice",
	"stove-booked-twice",
	"cooling-too-long",
	"heating-over-a-day",
	"no-place-for-water",
];
/** Three rounds a day with 30 L each: 268 minutes to heat, 440 to cool. */
const made = (settings: Record<string, string | number>) =>
	plan(unitWith({ heat_kw: 3, plan_days: 3, pots: 2, pots_on_stove: "", ...settings }));
const found = (settings: Record<string, string | number>) =>
	wholeProblems(made(settings).problems).filter(({ code }) => CODES.includes(code));

describe("water that cannot be cool in time", () => {
	test.each([
		["two pots for three rounds", {}, "pots-booked-twice", "pots"],
		[
			"one stove for a long hold",
			{ boil_hold_minutes: 60, stoves: 1, pots: 20, heat_kw: 1.3 },
			"stove-booked-twice",
			"stoves",
		],
		[
			"cooling longer than water keeps",
			{ boiled_water_hours: 7 },
			"cooling-too-long",
			"boiled_water_hours",
		],
		["a weak fire", { heat_kw: 0.3, pots: 20 }, "heating-over-a-day", "boil_minutes_measured"],
	])("%s: one problem, at its setting", (_what, settings, code, column) => {
		const problems = found(settings as Record<string, string | number>);
		// By these codes the page of the fires knows what to show above them.
		expect(notInTimeCodes).toContain(code);
		expect(problems.map((p) => [p.code, p.weight, p.file, p.column])).toEqual([
			[code, "error", "unit.csv", column],
		]);
	});

	test("the figures and what would help, what costs nothing first", () => {
		const [problem] = found({});
		expect(problem?.message).toMatch(
			/^For \d of 9 rounds the boiled water cannot be cool in time\. Pots: 2; one filling keeps a pot for 10\.4 h, with heating, hold and cooling\. Buckets of \d L would do, if a load still fits\. Cooling within \d\.\d h would do: stand the closed pot in cold water and measure it\. The fewest pots that would do: \d\. Boiling in one evening for the whole next day takes \d pots or covered vessels\.$/,
		);
	});

	test("the fewest stoves, where more of them would do", () => {
		const busy = { boil_hold_minutes: 60, stoves: 1, pots: 20, heat_kw: 1.3 };
		const stoves = Number(
			/fewest stoves that would do: (\d)\./.exec(found(busy)[0]?.message ?? "")?.[1],
		);
		expect(stoves).toBeGreaterThan(1);
		expect(found({ ...busy, stoves })).toEqual([]);
		expect(found({ ...busy, stoves: stoves - 1 })).toHaveLength(1);
	});

	test.each([
		["in the fewest pots, where these would do", {}, /^at least \d pots$/],
		[
			"with each round, where no pot would do",
			{ boiled_water_hours: 7 },
			/^water in time for every round$/,
		],
	])("what is allowed: %s", (_what, settings, allowed) => {
		expect(found(settings)[0]?.allowed).toMatch(allowed);
	});

	test("where fires are lit only when they are needed it is advice: all of them at once need not come", () => {
		expect(found({ boil_for: "after_use" }).map(({ code, weight }) => [code, weight])).toEqual([
			["pots-booked-twice", "advice"],
		]);
	});

	test("each lever does what is said of it, and one step less does not", () => {
		const [problem] = found({});
		const number = (words: RegExp) => Number(problem?.message.match(words)?.[1]);
		const litres = number(/Buckets of (\d+) L/);
		const pots = number(/fewest pots that would do: (\d+)/);
		expect(found({ bucket_fill_litres: litres })).toEqual([]);
		expect(found({ bucket_fill_litres: litres + 1 })).toHaveLength(1);
		expect(found({ pots })).toEqual([]);
		expect(found({ pots: pots - 1 })).toHaveLength(1);
	});

	test("the plan is made; the rounds without water stand last, with the reason, the others have their fires", () => {
		const rows = rowsOf(made({}), "boiling.csv");
		const waiting = rows.filter(({ light_by }) => !light_by?.outcome.ok);
		expect(made({}).made).toBe(true);
		expect(waiting.length).toBeGreaterThan(0);
		expect(rows.slice(-waiting.length)).toEqual(waiting);
		expect(waiting.flatMap(({ light_by }) => codesOf(light_by))).toEqual(
			waiting.map(() => "no-place-for-water"),
		);
		expect(waiting[0]?.light_by?.outcome).toMatchObject({
			problems: [{ file: "unit.csv", line: null, column: "pots" }],
		});
		const lit = columnOf(made({}), "boiling.csv", "light_by").filter(Boolean);
		expect(lit).toEqual([...lit].sort());
		expect(lit.length).toBeGreaterThan(0);
	});

	test("of a day late in the plan: what would help goes by the rounds around it", () => {
		// On the last two days the fullest round soaks several loads.
		const births = Array.from(
			{ length: 10 },
			(_, d) => `2027-03-${String(d + 1).padStart(2, "0")},${d < 8 ? 1 : 90},`,
		);
		const kits = Array.from({ length: 20 }, (_, at) => `K${at},bag set,in_service,,`);
		const busy = (pots: number) =>
			wholeProblems(
				plan(
					unitWith(
						{ heat_kw: 9, plan_days: 10, pots, pots_on_stove: "", boil_for: "every_round" },
						{
							"births.csv": ["date,births,note", ...births].join("\n"),
							"kits.csv": ["kit,kind,status,ready_since,note", ...kits].join("\n"),
						},
					),
				).problems,
			).filter(({ code }) => CODES.includes(code));
		expect(busy(3).map(({ allowed }) => allowed)).toEqual(["at least 5 pots"]);
		expect(busy(4)).toHaveLength(1);
		expect(busy(5)).toEqual([]);
	});

	test("enough of everything: nothing to say", () => {
		expect(found({ pots: 20 })).toEqual([]);
	});
});
