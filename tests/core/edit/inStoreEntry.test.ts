import { describe, expect, test } from "vitest";
import type { Workbook } from "../../../src/core/workbook.ts";
import { smallUnit } from "../smallUnit.ts";
import { entryOf } from "./begun.ts";

describe("what is in the store", () => {
	const store = (lots: string, packSize = "") =>
		smallUnit({
			"lots.csv": [
				"item,lot,quantity",
				...lots
					.split(" ")
					.filter(Boolean)
					.map((q, at) => `liquid,L${at},${q}`),
			].join("\n"),
			"items.csv": `item,group,measure,pack_size\nliquid,other,L,${packSize}`,
		});
	const cells = (workbook: Workbook | string) => {
		if (typeof workbook === "string") return workbook;
		const lots = workbook.tables["lots.csv"]?.rows ?? [];
		return [...lots.map((row) => row.join()), workbook.tables["items.csv"]?.rows[0]?.[3]];
	};

	test.each([
		["", "", ""],
		["10", "", "10"],
		["10", "5", "2 x 5"],
		["12", "5", "12"],
		["10", "1", "10"],
		["10", "many", "10"],
		["few", "5", "few"],
		["0.5", "0.25", "0.5"],
		["10 2.5", "5", "12.5"],
		["10 few", "5", ""],
	])("lots of %s in packs of %s are read as %s", (lots, packSize, text) => {
		expect(entryOf("in-store").read(store(lots, packSize))).toBe(text);
	});

	test.each([
		["5 x 1000", ["liquid,First count,5000", "1000"]],
		[" 5x1000 ", ["liquid,First count,5000", "1000"]],
		["12 X 2.5", ["liquid,First count,30", "2.5"]],
		["2×3", ["liquid,First count,6", "3"]],
		["2 * 3", ["liquid,First count,6", "3"]],
		["7", ["liquid,First count,7", "4"]],
	])("%s is written as it is meant", (text, written) => {
		expect(cells(entryOf("in-store").write(store("", "4"), text))).toEqual(written);
	});

	test.each([
		["L", "L"],
		[" bottle ", "bottle"],
		[" ", "mL"],
	])("it is asked for in the item's measure, %j, or else in that of its form", (measure, unit) => {
		const workbook = smallUnit({ "items.csv": `item,group,measure\nliquid,other,${measure}` });
		expect(entryOf("in-store").unit(workbook)).toBe(unit);
	});

	test("the lot that is there keeps its mark, and what stands there already changes nothing", () => {
		const one = store("10", "5");
		expect(cells(entryOf("in-store").write(one, "8"))).toEqual(["liquid,L0,8", "5"]);
		const second = smallUnit({ "lots.csv": "item,lot,quantity\npowder,P,3\nliquid,L,10" });
		expect(cells(entryOf("in-store").write(second, "8")).slice(0, -1)).toEqual([
			"powder,P,3",
			"liquid,L,8",
		]);
		expect(entryOf("in-store").write(one, " 2 x 5 ")).toBe(one);
		expect(entryOf("in-store").write(store(""), " ")).toContain("blank");
		expect(entryOf("in-store").write(one, "2 x 3 x 4")).toContain("allowed");
	});
});
