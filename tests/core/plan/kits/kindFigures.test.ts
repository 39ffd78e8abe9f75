import { describe, expect, test } from "vitest";
import { renewedPerDay } from "../../../../src/core/kits/renewedPerDay.ts";
import { plan } from "../../../../src/core/plan/plan.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { answerOf } from "../../answerOf.ts";
import { columnOf, contentOf, everything } from "../../contentOf.ts";
import { equalRounds } from "../../kits/reprocessed.ts";
import { codesOf, numberIn, problemCodes, rowsOf, totalOf, valueIn } from "../../planCells.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";

const KINDS = `kind,piece,count
	bag set,bag,1
	bag set,valve,2
	bag set,mask,2
	suction,bulb,3`;
const KITS = `kit,kind,status,ready_since,note
	A,bag set,in_service,,
	B,bag set,in_service,,
	C,bag set,in_service,,
	S,suction,in_service,,
	T,suction,in_service,,`;
const USE = "kind,uses_per_100_births\nbag set,6\nsuction,4";
const two = { "kinds.csv": KINDS, "kits.csv": KITS, "kind-use.csv": USE };
const made = plan(smallUnit(two));
const [monday] = rowsOf(made, "day-plan.csv");
const uses = [0.36, 0.24];
/** Steps of the small unit with one kit: 20 + 50 + 20 + 20 minutes. */
const expiries = [3, 2].map((kitsInService, k) =>
	answerOf(renewedPerDay, {
		kitsInService,
		reprocessing: {
			...equalRounds([uses[k] as number], [420, 840, 1260], 110),
			life: { days: 7, renewal: "in_time" },
		},
	}),
);
const perDay = uses.map((use, k) => use + (expiries[k] as number));
const sum = (parts: readonly number[]) => parts.reduce((all, part) => all + part, 0);

test("a kind whose only line cannot be read waits for it, and is not taken for no kind", () => {
	const bad = plan(smallUnit({ ...two, "kind-use.csv": "kind,uses_per_100_births\nbag set,many" }));
	const [day] = rowsOf(bad, "day-plan.csv");
	expect(codesOf(day?.kits_used_expected)).toEqual(["bad-cell"]);
});

describe("two kinds planned apart", () => {
	test.each([
		["kits_used_expected", 0.6],
		["kits_expired_expected", sum(expiries)],
		["kits_to_reprocess_expected", sum(perDay)],
		["kits_in_service", 5],
	])("%s of a day is both together", (column, expected) => {
		expectWithin(numberIn(monday, column), expected, 1e-12, column);
	});

	test("a kind that nobody uses changes no round, wherever it is listed", () => {
		const kinds = `kind,piece,count\nnever,bulb,1\n${KINDS.split("\n").slice(1, 4).join("\n")}`;
		const unused = {
			"kinds.csv": kinds,
			"kind-use.csv": "kind,uses_per_100_births\nnever,0\nbag set,10",
		};
		const runs = (files: Record<string, string>) =>
			numberIn(totalOf(plan(unitWith({ plan_days: 2 }, files)), "rounds"), "expected");
		expect(runs(unused)).toBeGreaterThan(0);
		expectWithin(runs(unused), runs({}) as number, 1e-12, "rounds");
	});

	test("each has its own curve and its own number, and the day needs both", () => {
		const rows = rowsOf(made, "kit-cover.csv");
		const needed = ["bag set", "suction"].map(
			(kind) =>
				rows.filter((row) => valueIn(row.kind) === kind && valueIn(row.enough) === "no").length + 1,
		);
		expect(numberIn(monday, "kits_needed")).toBe(sum(needed));
		expect(columnOf(made, "kit-cover.csv", "kind")).toEqual([
			...Array((needed[0] as number) + 3).fill("bag set"),
			...Array((needed[1] as number) + 3).fill("suction"),
		]);
	});

	test("each kind's curve is that of a unit which has only this kind", () => {
		uses.forEach((use, k) => {
			const kind = ["bag set", "suction"][k];
			const alone = plan(
				unitWith({ kits_used_per_100_births: (100 * use) / 6 }, { "rounds.csv": roundsOf }),
			);
			const both = plan(smallUnit({ ...two, "rounds.csv": roundsOf, "steps.csv": fixedSteps }));
			const alike = plan(
				unitWith(
					{ kits_used_per_100_births: (100 * use) / 6 },
					{ "rounds.csv": roundsOf, "steps.csv": fixedSteps },
				),
			);
			const curve = (of: typeof made, name: unknown) =>
				contentOf(of, "kit-cover.csv", "kind", "unmet_per_1000_uses")
					.filter(([row]) => row === name)
					.map(([, unmet]) => unmet as number);
			const own = curve(both, kind);
			curve(alike, "").forEach((unmet, i) => {
				expectWithin(own[i], unmet, 1e-9 * unmet, "per 1,000");
			});
			// The turnaround of the small unit's own steps goes by the kits of all kinds.
			expect(curve(alone, "")[0]).not.toBe(own[0]);
		});
	});

	test("a round carries the kits of both", () => {
		const means = [10, 7, 7].map((hours) => (sum(perDay) * hours) / 24);
		const rounds = sum(means.map((m) => 1 - Math.exp(-m)));
		expectWithin(numberIn(monday, "rounds_expected"), rounds, 1e-12, "rounds");
	});

	test("the hours of the day and what would help are shown for each", () => {
		for (const [file, rows] of [
			["day-cover.csv", 24],
			["levers.csv", 5],
		] as const) {
			const kinds = columnOf(made, file, "kind");
			expect(kinds).toEqual([...Array(rows).fill("bag set"), ...Array(rows).fill("suction")]);
		}
	});

	test.each([
		[0, /^No kit of the kind suction is in service; \d are needed\.$/],
		[1, /^One kit of the kind suction is in service and \d are needed\.$/],
		[2, /^2 kits of the kind suction are in service and \d are needed\.$/],
	])(
		"%d of one kind is too few of that kind, however many there are of the other",
		(have, words) => {
			const uses20 = "kind,uses_per_100_births\nbag set,6\nsuction,40";
			const kits = KITS.split("\n")
				.slice(0, 4 + have)
				.join("\n");
			const changes = { ...two, "kits.csv": kits, "kind-use.csv": uses20 };
			const short = plan(unitWith({ delivery_beds: 1 }, changes));
			expect(short.problems.filter((p) => p.code === "too-few-kits").map((p) => p.message)).toEqual(
				[expect.stringMatching(words)],
			);
		},
	);
});

const roundsOf = "start,label\n07:00,\n19:00,";
const fixedSteps = "step,basis,minutes,hands_on\nall,round,100,yes\nsoak,load,0,no";

describe("gauze by the piece, of kinds with different lists", () => {
	// Two squares a piece: 10 for a bag set, 6 for a suction kit.
	const squares = [10, 6] as const;
	const chance = (k: number, mean: number) => {
		let p = Math.exp(-mean);
		for (let i = 1; i <= k; i++) p *= mean / i;
		return p;
	};
	/** Every number of kits of the one kind with every number of the other. */
	const chances = (days: number) => {
		const all = new Map<number, number>();
		for (let a = 0; a < 60; a++)
			for (let b = 0; b < 60; b++) {
				const used = squares[0] * a + squares[1] * b;
				const p = chance(a, days * (perDay[0] as number)) * chance(b, days * (perDay[1] as number));
				all.set(used, (all.get(used) ?? 0) + p);
			}
		return [...all].sort(([a], [b]) => a - b);
	};
	const quantile = (days: number, level: number) => {
		let below = 0;
		return chances(days).find(([, p]) => {
			below += p;
			return below >= level;
		})?.[0];
	};

	test.each([0.5, 0.8, 0.95, 0.999])("at %d, of a day and of the week", (level) => {
		const sure = plan(unitWith({ plan_confidence: level }, two));
		const day = rowsOf(sure, "day-plan.csv")[0];
		const [ofDay, ofWeek] = [quantile(1, level) as number, quantile(7, level) as number];
		expectWithin(numberIn(day, "gauze_pieces_set_aside"), ofDay, 1e-9, "pieces");
		expectWithin(numberIn(totalOf(sure, "gauze_pieces"), "set_aside"), ofWeek, 1e-9, "pieces");
	});

	test("expected is each kind's kits times its own pieces", () => {
		const expected = 10 * (perDay[0] as number) + 6 * (perDay[1] as number);
		expectWithin(numberIn(monday, "gauze_pieces_expected"), expected, 1e-12, "pieces");
	});
});

describe("kinds and their uses", () => {
	test("kits of a kind without uses are named, line by line", () => {
		const one = plan(smallUnit({ ...two, "kind-use.csv": "kind,uses_per_100_births\nbag set,6" }));
		expect(one.problems.filter((p) => p.code === "kind-without-use")).toMatchObject([
			{ file: "kits.csv", line: 5, column: "kind", received: "suction", weight: "error" },
			{ file: "kits.csv", line: 6, column: "kind", received: "suction" },
		]);
	});

	test("uses nobody can read leave the plan unmade, and do not fall back to one share for all", () => {
		const bad = plan(
			smallUnit({ ...two, "kind-use.csv": "kind,uses_per_100_births\nbag set,6\nsuction,some" }),
		);
		expect(bad.made).toBe(false);
		expect(codesOf(rowsOf(bad, "day-plan.csv")[0]?.kits_used_expected)).toEqual(["bad-cell"]);
	});

	test("a kind twice is a problem", () => {
		const twice = plan(smallUnit({ ...two, "kind-use.csv": `${USE}\nsuction,5` }));
		expect(problemCodes(twice, "error")).toContain("doubled-row");
		expect(twice.made).toBe(false);
	});

	test("without uses by kind, nothing is apart, whatever kinds there are", () => {
		const empty = plan(smallUnit({ "kind-use.csv": "kind,uses_per_100_births" }));
		expect(everything(empty)).toEqual(everything(plan(smallUnit())));
		const mixed = plan(smallUnit({ "kinds.csv": KINDS, "kits.csv": KITS }));
		expect(new Set(columnOf(mixed, "kit-cover.csv", "kind"))).toEqual(new Set([""]));
		expect(numberIn(rowsOf(mixed, "day-plan.csv")[0], "kits_in_service")).toBe(5);
	});

	test("one kind with the uses of the settings is planned as without", () => {
		const named = everything(
			plan(smallUnit({ "kind-use.csv": "kind,uses_per_100_births\nbag set,10" })),
		);
		const blank = everything(plan(smallUnit()));
		const withoutName = (text: string) =>
			text
				.replaceAll("kind = bag set", "kind = ")
				.replaceAll('"of = bag set"', '"of = "')
				.replaceAll("kits of the kind bag set are", "kits are");
		expect(JSON.parse(withoutName(JSON.stringify(named)))).toEqual(
			JSON.parse(withoutName(JSON.stringify(blank))),
		);
	});
});
