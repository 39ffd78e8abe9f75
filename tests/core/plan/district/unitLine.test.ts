import { describe, expect, test } from "vitest";
import type { AnyRow } from "../../../../src/core/computedTable.ts";
import { unitLine, unreadLine } from "../../../../src/core/plan/district/unitLine.ts";
import { plan } from "../../../../src/core/plan/plan.ts";
import { nowhere, type Problem, problem } from "../../../../src/core/problem.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import type { Workbook } from "../../../../src/core/workbook.ts";
import { columnOf } from "../../contentOf.ts";
import { valueIn } from "../../planCells.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";

const WHOSE = { unit: "Hill", path: "units/hill" };
const valuesOf = (row: AnyRow) =>
	Object.fromEntries(Object.entries(row).map(([key, cell]) => [key, valueIn(cell)]));

function lineOf(workbook: Workbook, problems?: readonly Problem[]) {
	const made = plan(workbook);
	return valuesOf(unitLine(WHOSE, made, readWorkbook(workbook), problems ?? made.problems));
}

const kits = (count: number) =>
	["kit,kind,status,ready_since,note"]
		.concat(
			"ABCDEF"
				.slice(0, count)
				.split("")
				.map((kit) => `${kit},bag set,in_service,2027-02-28,`),
		)
		.join("\n");
const stocked = {
	"kits.csv": kits(6),
	"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
		liquid,L1,1000,2027-02-20,2027-02-20,,2029-07-10
		gauze squares,G1,2000,,2027-02-10,,
		clean gloves,H1,2000,,2027-02-01,,
		vinegar,V1,200,,2027-02-20,,`,
};

describe("how a unit stands", () => {
	test("without a first day there is no plan, and no number stands for what is not known", () => {
		expect(lineOf(unitWith({ plan_start: "" }))).toMatchObject({
			state: "not_planned",
			unmet_per_1000_uses: null,
			kits_needed: null,
			births_expected: null,
			orders_late: null,
		});
	});

	test("nothing to do", () => {
		expect(lineOf(smallUnit(stocked))).toMatchObject({
			unit: "Hill",
			path: "units/hill",
			first_day: "2027-03-01",
			days: 7,
			births_expected: 42,
			kits_needed: 4,
			kits_in_service: 6,
			problems: 0,
			first_run_out: null,
			first_run_out_item: "",
			orders_late: 0,
			last_counted: "2027-02-01",
			state: "in_order",
			in_words: "Nothing needs to be done now.",
		});
	});

	test("one thing to look at, in its own words", () => {
		expect(lineOf(smallUnit({ ...stocked, "kits.csv": kits(3) }))).toMatchObject({
			state: "look",
			in_words: "3 kits are in service and 4 are needed.",
			orders_late: 0,
		});
	});

	test("several: the worst, and how many more; what is short or late is counted", () => {
		const lots = `item,lot,quantity,made_on,received_on,arrives_on,expires_on
			liquid,L1,1000,2027-02-20,2027-02-20,,2029-07-10
			gauze squares,G1,30,,2027-02-10,,
			clean gloves,H1,2,,2027-02-01,,
			vinegar,V1,200,,2027-02-20,,`;
		const line = lineOf(smallUnit({ "kits.csv": kits(3), "lots.csv": lots }));
		const order = plan(smallUnit({ "kits.csv": kits(3), "lots.csv": lots }));
		const outs = columnOf(order, "order.csv", "run_out_on") as string[];
		const first = outs.filter((day) => day !== "").sort()[0];
		expect(line).toMatchObject({
			state: "look",
			in_words: "3 kits are in service and 4 are needed. And 2 more.",
			orders_late: 2,
			first_run_out: first,
			first_run_out_item: columnOf(order, "order.csv", "item")[outs.indexOf(String(first))],
		});
		expect(line.first_run_out_item).toBe("clean gloves");
	});

	test("an order that should have been placed is counted too", () => {
		const late = {
			...stocked,
			"lots.csv": stocked["lots.csv"].replace("L1,1000,", "L1,8,"),
			"journal.csv": "day,item,lot,entry,quantity,note\n2027-02-20,vinegar,V1,count,200,",
		};
		expect(lineOf(smallUnit(late))).toMatchObject({
			orders_late: 1,
			in_words: expect.stringMatching(
				/^liquid should have been ordered by [-\d]+: order it today\.$/,
			),
		});
	});

	test("not planned: the first thing that is wrong", () => {
		expect(lineOf(unitWith({ births_per_day: "many" }, stocked))).toMatchObject({
			state: "not_planned",
			in_words: 'Births a day: "many" was found; allowed is a number from 0 to 500.',
			problems: 1,
			orders_late: null,
			first_run_out: null,
			births_expected: undefined,
		});
	});

	test("problems and advice are counted apart", () => {
		const words = { code: "x", received: "", allowed: "", message: "Look." };
		const wrong = problem(nowhere, words);
		const found: Problem[] = [{ ...wrong, weight: "advice", message: "Think." }, wrong, wrong];
		expect(lineOf(smallUnit(stocked), found)).toMatchObject({ problems: 2, advice: 1 });
		expect(valuesOf(unreadLine(WHOSE, found))).toEqual({
			unit: "Hill",
			path: "units/hill",
			first_day: null,
			days: null,
			births_expected: null,
			kits_needed: null,
			kits_in_service: null,
			unmet_per_1000_uses: null,
			problems: 2,
			advice: 1,
			first_run_out: null,
			first_run_out_item: "",
			orders_late: null,
			last_counted: null,
			state: "not_read",
			in_words: "Look.",
		});
		expect(valuesOf(unreadLine(WHOSE, [])).in_words).toBe("Nothing of this unit could be read.");
	});
});

describe("times no kit is ready", () => {
	const two = {
		...stocked,
		"kinds.csv": "kind,piece,count\nbag set,bag,1\nsuction,bulb,3",
		"kits.csv": `${kits(2)}\nS,suction,in_service,,\nT,suction,in_service,,`,
		"kind-use.csv": "kind,uses_per_100_births\nbag set,6\nsuction,14",
	};

	test("with the kits in service, of the kind that is worse", () => {
		const cover = plan(smallUnit(two));
		const kinds = columnOf(cover, "kit-cover.csv", "kind");
		const sure = columnOf(cover, "kit-cover.csv", "kits");
		const unmet = columnOf(cover, "kit-cover.csv", "unmet_per_1000_uses").map(Number);
		const ofKind = (kind: string) => unmet[kinds.findIndex((k, i) => k === kind && sure[i] === 2)];
		expect(ofKind("suction")).toBeGreaterThan(Number(ofKind("bag set")));
		expect(lineOf(smallUnit(two)).unmet_per_1000_uses).toBe(ofKind("suction"));
	});

	test("without a kit there is no such number", () => {
		const none = smallUnit({ ...stocked, "kits.csv": kits(0), "kinds.csv": "kind,piece,count" });
		expect(lineOf(none).unmet_per_1000_uses ?? null).toBe(null);
	});
});
