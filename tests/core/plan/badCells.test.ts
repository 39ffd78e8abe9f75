import { describe, expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { codesOf, problemCodes, rowsOf, waiting } from "../planCells.ts";
import { smallUnit, unitWith } from "../smallUnit.ts";

const everything = Object.keys(rowsOf(plan(smallUnit()), "day-plan.csv")[0] ?? {});
const apartFrom = (...columns: string[]) =>
	everything.filter((column) => !columns.includes(column));
const setAsides = everything.filter((column) => column.endsWith("_set_aside"));
const solution = everything.filter((column) => column.startsWith("solution"));
const boiled = everything.filter((column) => column.startsWith("boiled"));
const vinegar = everything.filter((column) => column.startsWith("vinegar"));
const gauze = everything.filter((column) => column.startsWith("gauze"));
const ofRounds = [
	...everything.filter((column) => column.startsWith("rounds")),
	...solution,
	"chlorine_quantity_set_aside",
	...boiled,
	...vinegar,
	...gauze,
];
const needed = "kits_needed";
/** Which kits are renewed follows the clock of the rounds. */
const renewed = everything.filter((column) => /^kits_(expired|to_reprocess)/.test(column));
/** Only these are known without births. */
const withoutBirths = apartFrom("date", "kits_in_service", "chlorine_product");

type Case = readonly [
	what: string,
	workbook: ReturnType<typeof smallUnit>,
	code: string,
	waits: readonly string[],
];
const cases: readonly Case[] = [
	["births in words", unitWith({ births_per_day: "two" }), "bad-cell", withoutBirths],
	["births below nought", unitWith({ births_per_day: -1 }), "bad-cell", withoutBirths],
	["births beyond belief", unitWith({ births_per_day: "1e9" }), "bad-cell", withoutBirths],
	["no births given", unitWith({ births_per_day: "" }), "not-given", withoutBirths],
	[
		"a day's births in words",
		smallUnit({ "births.csv": "date,births,note\n2027-03-01,two," }),
		"bad-cell",
		// How many are renewed follows from the days that can be read.
		withoutBirths.filter((column) => column !== "kits_expired_expected"),
	],
	[
		"no rounds",
		smallUnit({ "rounds.csv": "start,label" }),
		"no-rounds",
		[...renewed, ...ofRounds, needed],
	],
	[
		"no file of rounds",
		smallUnit({ "rounds.csv": null }),
		"missing-file",
		[...renewed, ...ofRounds, needed],
	],
	[
		"a round nobody can read",
		smallUnit({ "rounds.csv": "start,label\n25:00,a\n07:00,b" }),
		"bad-cell",
		[...renewed, ...ofRounds, needed],
	],
	[
		"an unknown way of reprocessing",
		unitWith({ reprocessing: "sometimes" }),
		"bad-cell",
		[...renewed, ...ofRounds, needed],
	],
	[
		"hours nobody can read",
		smallUnit({ "hours.csv": "hour,share\n3,lots" }),
		"bad-cell",
		[...renewed, ...ofRounds, needed],
	],
	[
		"no steps",
		smallUnit({ "steps.csv": "step,basis,minutes,hands_on" }),
		"no-steps",
		[...renewed, ...ofRounds, needed],
	],
	[
		"rounds too close",
		smallUnit({ "rounds.csv": "start,label\n07:00,a\n08:00,b" }),
		"round-too-long",
		[needed],
	],
	[
		"a kit nobody can read",
		smallUnit({ "kits.csv": "kit,kind,status,ready_since,note\nA,bag set,lost,," }),
		"bad-cell",
		[
			"kits_expired_expected",
			"kits_to_reprocess_expected",
			"kits_to_reprocess_set_aside",
			"kits_in_service",
			needed,
			...ofRounds,
		],
	],
	[
		"a soak that does not fit",
		unitWith({ soak_container_litres: 6 }),
		"soak-too-small",
		[...renewed, ...ofRounds, needed],
	],
	[
		"a stock weaker than the target",
		unitWith({ target_strength_pct: 4 }),
		"too-weak",
		["chlorine_quantity_set_aside"],
	],
	[
		"a density that is missing",
		smallUnit({
			"chlorine.csv":
				"product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use\nliquid,liquid,5,pct_w_w,,,,yes",
		}),
		"density-missing",
		["chlorine_quantity_set_aside"],
	],
	[
		"two products in use",
		smallUnit({
			"chlorine.csv":
				"product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use\nliquid,liquid,5,pct_w_v,,,,yes\npowder,powder,70,pct_w_w,,,,yes",
		}),
		"product-in-use",
		["chlorine_product", "chlorine_quantity_set_aside"],
	],
	[
		"no product in use",
		smallUnit({
			"chlorine.csv":
				"product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use\nliquid,liquid,5,pct_w_v,,,,no",
		}),
		"product-in-use",
		["chlorine_product", "chlorine_quantity_set_aside"],
	],
	[
		"one product in use, and another row that nobody can read",
		smallUnit({
			"chlorine.csv":
				"product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use\nliquid,liquid,3.5,pct_w_v,,,,yes\npowder,powder,70,pct_w_w,,,,perhaps",
		}),
		"bad-cell",
		["chlorine_product", "chlorine_quantity_set_aside"],
	],
	["vinegar too weak", unitWith({ vinegar_acid_pct: 2 }), "vinegar-too-weak", vinegar],
	[
		"usage nobody can read",
		smallUnit({ "usage.csv": "item,basis,quantity,note\ngauze squares,piece,some," }),
		"bad-cell",
		gauze,
	],
	["no file of usage", smallUnit({ "usage.csv": null }), "missing-file", gauze],
	["no file of items", smallUnit({ "items.csv": null }), "missing-file", gauze],
	[
		"a kind without pieces",
		smallUnit({ "kinds.csv": "kind,piece,count\nother,bag,1" }),
		"unknown-kind",
		gauze,
	],
	[
		"a confidence nobody can read",
		unitWith({ plan_confidence: "very" }),
		"bad-cell",
		// What every round is prepared for goes by it too.
		[needed, ...setAsides, "boiled_litres_expected"],
	],
];

describe("what waits, and for what", () => {
	test.each(cases)("%s", (_what, workbook, code, waits) => {
		const made = plan(workbook);
		expect(waiting(made, "day-plan.csv").sort()).toEqual([...new Set(waits)].sort());
		for (const column of waits)
			expect(codesOf(rowsOf(made, "day-plan.csv")[0]?.[column]), column).toEqual([code]);
		expect(made.made).toBe(false);
		expect(problemCodes(made, "error")).toContain(code);
	});
});
