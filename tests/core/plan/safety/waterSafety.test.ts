import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { contentOf } from "../../contentOf.ts";
import { unitWith } from "../../smallUnit.ts";

const kits = Array.from({ length: 9 }, (_, at) => `K${at},bag set,in_service,,`);
const planOf = (settings: Record<string, string | number> = {}) =>
	plan(
		unitWith(
			{ plan_days: 2, heat_kw: 3, boil_for: "every_round", ...settings },
			{
				"births.csv": "date,births,note\n2027-03-01,1,\n2027-03-02,40,",
				"kits.csv": ["kit,kind,status,ready_since,note", ...kits].join("\n"),
			},
		),
	);
const rowsOf = (made: ReturnType<typeof plan>) =>
	contentOf(made, "how-safe.csv", "promise", "day", "set_aside").filter(
		([promise]) => promise === "boiled_for_rounds",
	);

test("water boiled for every round: of each day that of its own rounds", () => {
	const made = planOf();
	const rounds = contentOf(made, "boiling.csv", "date", "litres");
	const boiled = ["2027-03-01", "2027-03-02"].map((day) =>
		rounds.reduce((sum, [date, litres]) => sum + (date === day ? Number(litres) : 0), 0),
	);
	const rows = rowsOf(made);
	expect(rows.map(([, day]) => day)).toEqual(["2027-03-01", "2027-03-02"]);
	for (const [at, [, , aside]] of rows.entries())
		expectWithin(aside as number, boiled[at] as number, 1e-9, "L");
	expect(boiled[1]).toBeGreaterThan(boiled[0] as number);
});

test.each([
	["boiled to stand ready", { boil_for: "standing" }],
	["reprocessed after each use", { reprocessing: "after_each_use" }],
])("%s there are no rounds to boil for", (_, settings) => {
	expect(rowsOf(planOf(settings))).toEqual([]);
});
