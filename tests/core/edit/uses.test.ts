import { describe, expect, test } from "vitest";
import { filledEntries } from "../../../src/core/edit/begin/beginEntries.ts";
import { choiceOf, usesFor, withUsesTaken } from "../../../src/core/edit/begin/withUsesTaken.ts";
import { emptyWorkbook } from "../../../src/core/edit/emptyWorkbook.ts";
import { plan } from "../../../src/core/plan/plan.ts";
import type { Workbook } from "../../../src/core/workbook.ts";
import { contentOf } from "../contentOf.ts";
import { numberIn, problemCodes, totalOf } from "../planCells.ts";
import { smallUnit, unitWith } from "../smallUnit.ts";
import { begun, entered } from "./begun.ts";

const usedUp = (workbook = begun()) =>
	new Map(contentOf(plan(workbook), "supply-use.csv", "item", "set_aside") as [string, number][]);

describe("from an empty workbook", () => {
	test("gauze, gloves, vinegar and soap stand in the first plan with amounts", () => {
		const made = plan(begun());
		expect(made.made).toBe(true);
		expect(numberIn(totalOf(made, "gauze_pieces"), "set_aside")).toBeGreaterThan(0);
		const use = usedUp();
		for (const item of ["Sterile gauze for drying", "Sterile gloves", "Vinegar", "Liquid soap"])
			expect(use.get(item), item).toBeGreaterThan(0);
	});

	test("every use of the proposal has its basis, its quantity and where that comes from", () => {
		for (const { item, quantity, source } of usesFor(emptyWorkbook())) {
			expect(quantity, item).toBeGreaterThan(0);
			expect(["estimate", "from memory"]).toContain(source.mark);
		}
		const [line] = begun().tables["usage.csv"]?.rows ?? [];
		expect(line?.slice(0, 3)).toEqual(["Sterile gauze for drying", "kit", "24"]);
		expect(line?.[3]).toMatch(/Estimate/);
	});

	test("of the proposal each line can be changed or left", () => {
		const rest = begun(["steps"]);
		const chosen = entered(
			rest,
			"steps",
			`taken ${choiceOf([
				[0, "12,5"],
				[10, "1"],
			])}`,
		);
		expect(chosen.tables["usage.csv"]?.rows.map((row) => [row[0], row[2]])).toEqual([
			["Sterile gauze for drying", "12.5"],
			["Soft brush", "1"],
		]);
		expect(choiceOf([])).toBe("-");
		const none = entered(rest, "steps", `taken ${choiceOf([])}`);
		expect(none.tables["usage.csv"]?.rows).toEqual([]);
		expect(none.tables["steps.csv"]?.rows.length).toBeGreaterThan(10);
	});

	test("without gauze the plan is made, and shows no number for it, with the reason", () => {
		const made = plan(entered(begun(["steps"]), "steps", "taken -"));
		expect(made.made).toBe(true);
		expect(totalOf(made, "gauze_pieces").set_aside?.outcome.ok).toBe(false);
		expect(problemCodes(made, "advice")).toContain("use-not-known");
		expect(problemCodes(made, "error")).toEqual([]);
	});

	test("what is used up already is never replaced, and vinegar goes by the settings", () => {
		expect(entered(smallUnit(), "steps", "taken")).toEqual(smallUnit());
		const uses = (settings: Record<string, number>) =>
			usesFor(unitWith(settings)).filter(({ basis }) => basis === "descale");
		expect(uses({ descale_fill_litres: 3 }).map(({ quantity }) => quantity)).toEqual([1.5]);
		expect(uses({ descale_every_rounds: 0 })).toEqual([]);
	});
});

/** What is of chlorine alone, of what stays wet, of washing, of the autoclave. */
test.each([
	["chlorine", true, true, true, false],
	["boiling", false, true, true, false],
	["steam", false, true, true, false],
	["autoclave", false, false, true, true],
	["single_use", false, false, false, false],
])("by %s a round uses what its steps ask for", (method, mixed, wet, washed, wrapped) => {
	const uses = usesFor(unitWith({ method, descale_every_rounds: 5 }));
	const has = (item: string, basis?: string) =>
		uses.some((use) => use.item === item && (basis ?? use.basis) === use.basis);
	expect(has("Label", "round")).toBe(mixed);
	expect(
		["Sterile gauze for drying", "Sterile gloves", "Sterile linen"].map((item) => has(item)),
	).toEqual([wet, wet, wet]);
	expect(["Utility gloves", "Liquid soap", "Vinegar"].map((item) => has(item))).toEqual([
		washed,
		washed,
		washed,
	]);
	expect([has("Wrap for the autoclave"), has("Indicator tape, a strip")]).toEqual([
		wrapped,
		wrapped,
	]);
	expect([has("Examination gloves"), has("Apron"), has("Label", "kit")]).toEqual([
		true,
		true,
		true,
	]);
});

const namesOf = (workbook: Workbook) =>
	usesFor(workbook).map(({ item, basis }) => `${item}, ${basis}`);

test.each([
	["no bath size", { descale_fill_litres: "some" }],
	["no strength wanted", { descale_acid_pct: "some" }],
	["vinegar of no known strength", { vinegar_acid_pct: "some" }],
	["vinegar weaker than wanted", { descale_acid_pct: 6, vinegar_acid_pct: 5 }],
] as const)("with %s no vinegar is proposed", (_what, settings) => {
	expect(namesOf(unitWith({}))).toContain("Vinegar, descale");
	expect(namesOf(unitWith(settings))).not.toContain("Vinegar, descale");
});

test("without a method that is known the kits go by chlorine", () => {
	const used = (method: string) => namesOf(unitWith({ method, wipe_solution_litres: 0 }));
	expect(used("some")).toEqual(used("chlorine"));
	expect(used("some")).toContain("Label, round");
});

test("a solution to wipe with is mixed whatever the kits go by", () => {
	const boiled = { method: "boiling", wipe_solution_litres: 0 };
	expect(namesOf(unitWith(boiled))).not.toContain("Label, round");
	expect(namesOf(unitWith({ ...boiled, wipe_solution_litres: 2 }))).toContain("Label, round");
});

test("the kinds of the kits there are say by which methods it goes; without a kit all that are listed", () => {
	const files = {
		"kinds.csv": "kind,piece,count\nbag set,bag,1\nsuction,bulb,1",
		"treatments.csv": "kind,piece,method\nsuction,,autoclave",
	};
	expect(namesOf(unitWith({}, files))).not.toContain("Wrap for the autoclave, kit");
	const sucked = { ...files, "kits.csv": "kit,kind,status\nA,suction,in_service" };
	expect(namesOf(unitWith({ wipe_solution_litres: 0 }, sucked))).toContain(
		"Wrap for the autoclave, kit",
	);
	expect(namesOf(unitWith({ wipe_solution_litres: 0 }, sucked))).not.toContain("Label, round");
	expect(namesOf(unitWith({}, { ...files, "kits.csv": "kit,kind,status" }))).toContain(
		"Wrap for the autoclave, kit",
	);
});

test("an item of the store stays as it is, a line of nothing is none, and what is no number or no line of the proposal is left out", () => {
	const unit = smallUnit({ "usage.csv": "item,basis,quantity,note\n,  ,," });
	const written = withUsesTaken(unit, `${choiceOf([[6, " 2 "]])} 7:many 99:1`);
	expect(written.tables["usage.csv"]?.rows.flat().filter((cell) => cell.trim() !== "")).toEqual([
		"Mask",
		"worker_round",
		"2",
		expect.stringContaining("one for each person in a round ("),
	]);
	expect(written.tables["items.csv"]?.rows).toEqual([
		...(unit.tables["items.csv"]?.rows ?? []),
		["Mask", "other", "piece", "", "", "", "", ""],
	]);
	const listed = withUsesTaken(
		smallUnit({ "usage.csv": "item,basis,quantity,note", "items.csv": "item,group\n Mask ,gauze" }),
		"6:2",
	);
	expect(listed.tables["items.csv"]?.rows).toEqual([["Mask ", "gauze"]]);
});

test("a kit at every birth means 100 for 100 births; no is filled in already", () => {
	const [every] = filledEntries;
	if (!every) throw new Error("nothing is filled in");
	const share = (workbook: ReturnType<typeof begun>) =>
		workbook.tables["unit.csv"]?.rows.find(([key]) => key === "kits_used_per_100_births")?.[1];
	expect(every.read(begun())).toBe("no");
	const yes = every.write(begun(), "yes");
	if (typeof yes === "string") throw new Error(yes);
	expect([every.read(yes), share(yes)]).toEqual(["yes", "100"]);
	const no = every.write(yes, "no");
	if (typeof no === "string") throw new Error(no);
	expect([every.read(no), share(no)]).toEqual(["no", ""]);
});
