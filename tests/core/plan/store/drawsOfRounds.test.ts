import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { countsByNow } from "../../../../src/core/plan/countsByNow.ts";
import { plan } from "../../../../src/core/plan/plan.ts";
import { drawsOfRounds } from "../../../../src/core/plan/store/drawsOfRounds.ts";
import { storeEntries } from "../../../../src/core/plan/store/storeEntries.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { always } from "../../../properties/workbooks.ts";
import { contentOf } from "../../contentOf.ts";
import { unitWith } from "../../smallUnit.ts";

const ROUNDS = "date,start,kits,product,lot,litres";
const JOURNAL = "day,item,lot,entry,quantity,note";

/** The liquid of the small unit has 3.5 % and does not fade; lot L1 holds 10 L. A preparation is 5.5 L. */
function madeWith(rounds: readonly string[], journal: readonly string[] = [], by = "rounds") {
	return plan(
		unitWith(
			{ product_drawn_by: by },
			{
				"rounds-done.csv": [ROUNDS, ...rounds].join("\n"),
				"journal.csv": [JOURNAL, ...journal].join("\n"),
			},
		),
	);
}

function onHand(made: ReturnType<typeof plan>): number {
	const row = contentOf(made, "stock.csv", "lot", "on_hand").find(([lot]) => lot === "L1");
	return Number(row?.[1]);
}

const round = (date: string, litres: string, lot = "L1") => `${date},07:00,A,,${lot},${litres}`;

describe("product drawn by rounds", () => {
	test.each<[string, string[], string[], number]>([
		// 7 L of 0.5 % from 3.5 % take 1 L.
		["litres at the strength wanted", [round("2027-02-20", "7")], [], 9],
		["two rounds", [round("2027-02-20", "7"), round("2027-02-21", "3.5")], [], 8.5],
		// 5.5 L take 785.7 mL, measured out as 790.
		["without litres the dose of a preparation", [round("2027-02-20", "")], [], 9.21],
		["of no lot, nothing", [round("2027-02-20", "7", "")], [], 10],
		["after the plan ends, nothing", [round("2027-03-08", "7")], [], 10],
		[
			"an issue of that day is not counted twice",
			[round("2027-02-20", "7")],
			["2027-02-20,liquid,L1,issue,1,"],
			9,
		],
		[
			"an issue of another day counts",
			[round("2027-02-20", "7")],
			["2027-02-21,liquid,L1,issue,2,"],
			7,
		],
		[
			"what is lost that day counts",
			[round("2027-02-20", "7")],
			["2027-02-20,liquid,L1,loss,2,"],
			7,
		],
		[
			"a count since has the last word",
			[round("2027-02-20", "7")],
			["2027-02-22,liquid,L1,count,8,"],
			8,
		],
	])("%s", (_what, rounds, journal, left) => {
		expectWithin(onHand(madeWith(rounds, journal)), left, 1e-9, "L");
	});

	test("a round draws the product that it was mixed from", () => {
		// 7 L of 0.5 % are 35 g of available chlorine, half a hundred grams of powder of 70 %.
		const made = madeWith(["2027-02-20,07:00,A,powder,P1,7"]);
		const lots = contentOf(made, "stock.csv", "lot", "on_hand");
		expect(lots.find(([lot]) => lot === "L1")?.[1]).toBe(10);
		expectWithin(Number(lots.find(([lot]) => lot === "P1")?.[1]), 450, 1e-9, "g");
	});

	// Contract, calculations.md 8: the strength on the day from section 5; so of each what the mixing sheet has measured out.
	test.each([
		["six births a day", 6],
		["a hundred", 100],
	])(
		"a round without litres takes what the mixing sheet says, dosed for wet kits: %s",
		(_, births) => {
			const settings = { births_per_day: births, kits_used_per_100_births: 100 };
			const many = Array.from({ length: 30 }, (_, kit) => `K${kit},bag set,in_service,,`);
			const made = plan(
				unitWith(
					{ product_drawn_by: "rounds", carry_in_ml_per_kit: 30, ...settings },
					{
						"rounds-done.csv": [ROUNDS, round("2027-02-20", "")].join("\n"),
						"kits.csv": ["kit,kind,status,ready_since,note", ...many].join("\n"),
					},
				),
			);
			const [, , measured] = contentOf(
				made,
				"mixing.csv",
				"product",
				"lot",
				"product_quantity",
			).find(([product]) => product === "liquid") as [string, string, number];
			expectWithin(onHand(made), 10 - measured / 1000, 1e-9, "L");
		},
	);

	test.each(["target_strength_pct", "measure_step_ml", "measure_step_g"])(
		"nothing is drawn where nobody can read the setting %s",
		(key) => {
			const files = { "rounds-done.csv": [ROUNDS, round("2027-02-20", "7")].join("\n") };
			const read = readWorkbook(unitWith({ product_drawn_by: "rounds", [key]: "much" }, files));
			expect(drawsOfRounds(read)).toEqual([]);
		},
	);

	test("without litres nothing is drawn where those of a preparation are not known", () => {
		const drawn = (settings: Record<string, string>, files: Record<string, string>) =>
			drawsOfRounds(readWorkbook(unitWith({ product_drawn_by: "rounds", ...settings }, files)));
		const rounds = (litres: string) => ({
			"rounds-done.csv": [ROUNDS, round("2027-02-20", litres)].join("\n"),
		});
		expect(drawn({}, rounds(""))).toHaveLength(1);
		expect(drawn({ soak_fill_litres: "much" }, rounds(""))).toEqual([]);
	});

	test("nothing is drawn of a product whose fading nobody can tell", () => {
		const of = (storeC: string) =>
			drawsOfRounds(
				readWorkbook(
					unitWith(
						{ product_drawn_by: "rounds", store_c: storeC },
						{
							"rounds-done.csv": [ROUNDS, round("2027-02-20", "7")].join("\n"),
							"chlorine.csv":
								"product,form,strength,strength_measure,fade_factor,in_use\nliquid,liquid,3.5,pct_w_v,1,yes",
						},
					),
				),
			);
		expect(of("25")).toHaveLength(1);
		expect(of("warm")).toEqual([]);
	});

	test("without a first day of the plan no day is after its last", () => {
		const read = readWorkbook(unitWith({ plan_start: "" }));
		expect(countsByNow(read, "2099-12-31")).toBe(true);
		expect(countsByNow(readWorkbook(unitWith({})), "2027-03-07")).toBe(true);
		expect(countsByNow(readWorkbook(unitWith({})), "2027-03-08")).toBe(false);
	});

	test("of a round that names no product the one in use is drawn, wherever it stands in the list", () => {
		const made = plan(
			unitWith(
				{ product_drawn_by: "rounds" },
				{
					"rounds-done.csv": [ROUNDS, round("2027-02-20", "7")].join("\n"),
					"chlorine.csv": `product,form,strength,strength_measure,fade_factor,in_use
						powder,powder,70,pct_w_w,,no
						liquid,liquid,3.5,pct_w_v,0,yes`,
				},
			),
		);
		expect(onHand(made)).toBe(9);
	});

	test("a lot of another item that has the same mark is not drawn from", () => {
		const made = plan(
			unitWith(
				{ product_drawn_by: "rounds" },
				{
					"rounds-done.csv": [ROUNDS, round("2027-02-20", "7")].join("\n"),
					"lots.csv": `item,lot,quantity,made_on,received_on
						powder,L1,500,,2026-12-01
						liquid,L1,10,2027-01-10,2027-01-20`,
				},
			),
		);
		expect(contentOf(made, "stock.csv", "item", "on_hand")).toContainEqual(["powder", 500]);
		expect(contentOf(made, "stock.csv", "item", "on_hand")).toContainEqual(["liquid", 9]);
	});

	test("of a lot weaker than what is mixed nothing is drawn, for nothing can be mixed from it", () => {
		const files = { "rounds-done.csv": [ROUNDS, round("2027-02-20", "7")].join("\n") };
		const settings = { product_drawn_by: "rounds", target_strength_pct: 4 };
		expect(onHand(plan(unitWith(settings, files)))).toBe(10);
	});

	test("the journal issues, where the unit says so or nothing", () => {
		const rounds = [round("2027-02-20", "7")];
		const issue = ["2027-02-20,liquid,L1,issue,2,"];
		for (const by of ["journal", ""]) expect(onHand(madeWith(rounds, issue, by))).toBe(8);
	});

	test("an issue that would count twice, and a round that draws nothing, are asked about", () => {
		const made = madeWith(
			[round("2027-02-20", "7"), round("2027-02-21", "7", "L9")],
			["2027-02-20,liquid,L1,issue,1,"],
		);
		const codes = made.problems.map(({ code, line }) => `${code} ${line}`);
		expect(codes).toContain("issue-on-round-day 2");
		expect(codes).toContain("round-draws-nothing 3");
	});

	test("more drawn than there is: nothing is left, and the stock sheet says so", () => {
		const made = madeWith([round("2027-02-20", "77")]);
		expect(onHand(made)).toBe(0);
		const [l1] = contentOf(made, "stock.csv", "remark");
		expect(String(l1?.[0])).toContain("1 more went out than the books held");
	});
});

test("lots, journal and rounds add up under any sequence, and stock is never negative in silence", () => {
	const day = fc.integer({ min: 10, max: 28 });
	const tenths = (max: number) => fc.integer({ min: 0, max }).map((tenth) => tenth / 10);
	const entry = fc.tuple(day, fc.constantFrom("issue", "loss", "receipt"), tenths(80));
	// One round a day, so that its key is its own; 7 L take 1 L.
	const rounds = fc.uniqueArray(fc.tuple(day, fc.integer({ min: 1, max: 40 })), {
		maxLength: 8,
		selector: ([date]) => date,
	});
	fc.assert(
		fc.property(rounds, fc.array(entry, { maxLength: 10 }), (done, entries) => {
			const made = madeWith(
				done.map(([date, litres]) => round(`2027-02-${date}`, String(litres * 7))),
				entries.map(([date, kind, amount]) => `2027-02-${date},liquid,L1,${kind},${amount},`),
			);
			const roundDays = new Set(done.map(([date]) => date));
			// By hand, day by day: what the journal says in its order, then the day's round.
			let left = 10;
			let short = 0;
			const out = (amount: number) => {
				short += Math.max(0, amount - left);
				left = Math.max(0, left - amount);
			};
			for (let date = 10; date <= 28; date++) {
				for (const [on, kind, amount] of entries) {
					if (on !== date) continue;
					if (kind === "receipt") left += amount;
					else if (kind === "loss" || !roundDays.has(date)) out(amount);
				}
				for (const [on, litres] of done) if (on === date) out(litres);
			}
			expectWithin(onHand(made), left, 1e-6, "L");
			const [l1] = contentOf(made, "stock.csv", "remark");
			expect(String(l1?.[0]).includes("more went out")).toBe(short > 1e-9);
		}),
		always(60),
	);
});

test("nothing is drawn of what the store does not list", () => {
	const items = "item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level";
	const read = readWorkbook(
		unitWith(
			{ product_drawn_by: "rounds" },
			{ "rounds-done.csv": `${ROUNDS}\n${round("2027-02-20", "7")}`, "items.csv": items },
		),
	);
	expect(drawsOfRounds(read)).toEqual([]);
});

test("why there is less leads to the litres of the round", () => {
	const read = readWorkbook(
		unitWith(
			{ product_drawn_by: "rounds" },
			{ "rounds-done.csv": `${ROUNDS}\n${round("2027-02-20", "7")}` },
		),
	);
	expect(storeEntries(read)).toMatchObject([
		{ lot: "L1", place: { file: "rounds-done.csv", line: 2, column: "litres" } },
	]);
});
