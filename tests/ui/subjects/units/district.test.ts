import { describe, expect, test } from "vitest";
import { itemNames } from "../../../../src/core/units/itemNames.ts";
import { readCsv } from "../../../../src/io/readCsv.ts";
import { unzip } from "../../../../src/io/unzip.ts";
import { zipTexts, zipWorkbook } from "../../../../src/io/zipWorkbook.ts";
import { Store } from "../../../../src/ui/state/store.ts";
import { District } from "../../../../src/ui/subjects/units/district.ts";
import {
	districtLines,
	isFolded,
	orderHeadline,
	packsSaved,
	sharesOf,
} from "../../../../src/ui/subjects/units/districtLines.ts";
import { districtLists } from "../../../../src/ui/subjects/units/districtLists.ts";
import { districtNotes, usualDay } from "../../../../src/ui/subjects/units/districtNotes.ts";
import { givenUnits } from "../../../../src/ui/subjects/units/givenUnits.ts";
import { readUnit } from "../../../../src/ui/subjects/units/readUnit.ts";
import { saidOnce } from "../../../../src/ui/subjects/units/unitsNotInSums.ts";
import { unitWith } from "../../../core/smallUnit.ts";

const HEADER =
	"item,measure,usable,on_order,use_expected,target_stock,order_packs,order_quantity,cost,run_out_on,order_by,months_of_stock,remark,emergency,pack_size,pack_price,unit_name";
const orderOf = (name: string, usable: number, item = "gauze") =>
	`${HEADER}\n${item},piece,${usable},0,80,100,1,100,2,,,,,no,100,2,${name}\n`;

type Text = string | Uint8Array;

async function readAll(district: District): Promise<void> {
	for (let unit = district.next(); unit; unit = district.next())
		district.add(await readUnit(unit, undefined, async () => undefined));
}

/** A district of files, read one after the other as the page does. */
async function districtOf(...files: readonly (readonly [name: string, content: Text])[]) {
	const district = new District();
	const given = files.map(([path, content]) => ({
		path,
		file: new File([content as BlobPart], path.split("/").at(-1) as string),
	}));
	district.receive(givenUnits(given).units);
	await readAll(district);
	return district;
}

function sumsOf(district: District, names: { item: string; name: string }[] = []) {
	const sums = district.sums(itemNames(names), []);
	for (;;) {
		const next = sums.next();
		if (next.done) return next.value;
	}
}

/** As the page shows them below its notes. */
function linesOf(district: District, names: { item: string; name: string }[] = []) {
	return districtLines(sumsOf(district, names).table, saidOnce(district.units, itemNames(names)));
}

function workbook(name: string, plan_start = "2027-03-01"): Uint8Array {
	const unit = unitWith({ unit_name: name, plan_start });
	return zipWorkbook(unit, new Store(unit).state.plan);
}

describe("files as units send them", () => {
	test("files of one name are all counted, the same text only once, others are rows with their reason", async () => {
		const district = await districtOf(
			["order.csv", orderOf("A", 70)],
			["order.csv", orderOf("B", 60)],
			["copy.csv", orderOf("A", 70)],
			["photo.jpg", new Uint8Array([255, 216, 255])],
			["unit.zip", workbook("C")],
		);
		expect(district.units.map(({ row }) => [row.unit, row.path, row.state])).toEqual([
			["photo.jpg", "photo.jpg", "not_read"],
			["A", "copy.csv", "not_planned"],
			["B", "order.csv (2)", "not_planned"],
			["C", "unit.zip", expect.stringMatching(/look|in_order/)],
		]);
		expect(district.units[0]?.row.in_words).not.toBe("");
		expect(district.counted).toBe(3);
		expect(districtNotes(district, sumsOf(district)).join(" ")).toContain(
			"order.csv says the same as copy.csv",
		);
	});

	test("units that do not say their name are told apart by file, also where the files share a name", async () => {
		const district = await districtOf(
			["order.csv", orderOf("", 70)],
			["order.csv", orderOf("", 60)],
		);
		const [line] = linesOf(district);
		expect(line).toMatchObject({ item: "gauze", need: 70, packs: 1, unitPacks: 2, short: 2 });
		expect(line && sharesOf(line, district.units, itemNames([]))).toEqual([
			"order.csv: 30 pieces, 1 pack of its own",
			"order.csv (2): 40 pieces, 1 pack of its own",
		]);
		expect(packsSaved(line ? [line] : [])).toContain("2 packs");
		expect(orderHeadline(2, line ? [line] : [])).toBe("2 units together: 1 pack of 1 item");
	});

	test("a zip of which only an order can be read gives its order", async () => {
		const district = await districtOf(["a.zip", zipTexts({ "plan/order.csv": orderOf("A", 70) })]);
		expect(district.units.map(({ row, orders }) => [row.unit, orders.length])).toEqual([["A", 1]]);
	});

	test("a file that has gone is a row with its reason", async () => {
		const gone = { size: 1, name: "gone.zip", arrayBuffer: () => Promise.reject(new Error()) };
		const given = { path: "gone.zip", kind: "workbook", files: [gone as unknown as File] } as const;
		const { unit } = await readUnit(given, undefined, async () => undefined);
		expect(unit.row).toMatchObject({ state: "not_read", problems: 1 });
		expect(unit.row.in_words).toContain("Choose it again");
	});
});

test("a unit that gave nothing of any item is said once, one that lacks an item there", async () => {
	const row = (item: string, usable: string, unit: string) =>
		`${item},piece,${usable},0,80,100,1,100,2,,,,,no,100,2,${unit}\n`;
	const district = await districtOf(
		["a.csv", `${HEADER}\n${row("gauze", "70", "A")}${row("soap", "20", "A")}`],
		["b.csv", `${HEADER}\n${row("gauze", "", "B")}${row("soap", "20", "B")}`],
		["c.csv", `${HEADER}\n${row("gauze swab", "", "C")}${row("soap", "", "C")}`],
	);
	const names = [{ item: "gauze swab", name: "gauze" }];
	expect(districtNotes(district, sumsOf(district, names)).join(" ")).toContain(
		"1 unit gave no stock or target of any item, so nothing of theirs is in the sums: C.",
	);
	expect(linesOf(district, names).map(({ item, remark }) => [item, remark])).toEqual([
		["gauze", "1 unit gave no stock or target, so nothing of theirs is in the sum."],
		["soap", ""],
	]);
});

test("two workbooks of one unit are both counted, and named; one taken out counts no more", async () => {
	const district = await districtOf(["a.csv", orderOf("A", 70)], ["b.csv", orderOf("A", 60)]);
	expect(district.problems.map(({ code }) => code)).toEqual(["unit-named-twice"]);
	const [first] = district.units;
	if (first) district.takeOut(first);
	expect(district.problems).toEqual([]);
	expect(linesOf(district)[0]?.need).toBe(40);
	district.receive(
		givenUnits([{ path: "a.csv", file: new File([orderOf("A", 70)], "a.csv") }]).units,
	);
	await readAll(district);
	expect(district.units).toHaveLength(2);
});

test("items are one by the table of names alone; what needs no pack folds away", async () => {
	const district = await districtOf(
		["a.csv", orderOf("A", 70)],
		["b.csv", orderOf("B", 60, "gauze 10x10")],
		["c.csv", orderOf("C", 200, "soap")],
	);
	const lines = (names: { item: string; name: string }[]) =>
		linesOf(district, names).map((line) => [line.item, line.need, isFolded(line)]);
	expect(lines([])).toEqual([
		["gauze", 30, false],
		["gauze 10x10", 40, false],
		["soap", 0, true],
	]);
	expect(lines([{ item: "gauze 10x10", name: "gauze" }])).toEqual([
		["gauze", 70, false],
		["soap", 0, true],
	]);
});

test("plans of other weeks are said, with the units whose week is not that of most", async () => {
	const district = await districtOf(
		["a.zip", workbook("A")],
		["b.zip", workbook("B")],
		["c.zip", workbook("C", "2027-03-08")],
	);
	expect(usualDay(district)).toBe("2027-03-01");
	const [note] = districtNotes(district, sumsOf(district));
	expect(note).toContain("Mon 1 Mar (2 units) and Mon 8 Mar (1 unit)");
	expect(note).toMatch(/Another week than most have: C\.$/);
});

test("what a stop left unread is said first", async () => {
	const district = await districtOf(["a.csv", orderOf("A", 70)]);
	district.receive(givenUnits([{ path: "b.csv", file: new File([], "b.csv") }]).units);
	expect(districtNotes(district, sumsOf(district))[0]).toContain("was not read: 1 unit");
});

test("all lists come as the command line writes them, with the district's own tables", async () => {
	const district = await districtOf(["a.csv", orderOf("A", 70)], ["b.zip", workbook("B")]);
	const nameOf = itemNames([{ item: "gauze", name: "Gauze" }]);
	const sums = sumsOf(district, [{ item: "gauze", name: "Gauze" }]);
	const zip = districtLists({
		...{ district, sums, nameOf, names: "gauze,Gauze", stock: "" },
		problems: [],
	});
	const files = new Map(
		unzip("district.zip", zip).files.map(({ name, bytes }) => [
			name,
			new TextDecoder().decode(bytes),
		]),
	);
	expect([...files.keys()].sort()).toEqual([
		"datapackage.json",
		"names.csv",
		"units-needs.csv",
		"units-order.csv",
		"units-problems.csv",
		"units.csv",
	]);
	expect(files.get("names.csv")).toBe("item,name\ngauze,Gauze");
	const rows = (file: string) => readCsv(file, files.get(file) ?? "").table.rows;
	expect(rows("units.csv").map(([unit]) => unit)).toEqual(["A", "B"]);
	expect(rows("units-needs.csv")[0]?.slice(0, 10)).toEqual([
		...["A", "a.csv", "Gauze", "gauze", "piece", "70", "0", "80", "100", "30"],
	]);
	for (const file of ["units.csv", "units-needs.csv", "units-order.csv"])
		expect(new Set(rows(file).map((cells) => cells.length))).toEqual(
			new Set([readCsv(file, files.get(file) ?? "").table.header.length]),
		);
});
