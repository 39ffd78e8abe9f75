import { describe, expect, test } from "vitest";
import type { Workbook } from "../../../src/core/workbook.ts";
import { smallUnit } from "../smallUnit.ts";
import { entered, entryOf } from "./begun.ts";

describe("kits", () => {
	const KITS = "kit,kind,status,ready_since,note";
	const kits = (lines: string, kinds = "kind,piece,count\nsuction,bulb,1") =>
		smallUnit({ "kits.csv": `${KITS}\n${lines}`, "kinds.csv": kinds });
	const added = (unit: Workbook) =>
		entered(unit, "kits", "2").tables["kits.csv"]?.rows.map(([kit, kind]) => [kit, kind]);

	test("new ones have the kind of those there are, else the first listed, else one named here; and no name twice", () => {
		expect(added(kits("K1,bag set,in_service,,"))).toEqual([
			["K1", "bag set"],
			["K2", "bag set"],
		]);
		expect(added(kits("K2,  ,in_service,,", "kind,piece,count\n ,x,1\nsuction,bulb,1"))).toEqual([
			["K2", "  "],
			["K1", "suction"],
		]);
		expect(added(kits("K2,,in_service,,"))).toEqual([
			["K2", ""],
			["K1", "suction"],
		]);
		const spaced = "piece,kind,count\nmask, ,1\nbulb, suction ,1";
		expect(added(kits("K2,,in_service,,", spaced))?.at(-1)).toEqual(["K1", "suction"]);
		expect(added(kits("", "kind,piece,count"))?.slice(-2)).toEqual([
			["K1", "Newborn resuscitation kit"],
			["K2", "Newborn resuscitation kit"],
		]);
	});

	test("none is no number, as many as there are change nothing, and a part of one is none", () => {
		expect(entryOf("kits").read(kits("A,bag set,out_of_service,,"))).toBe("");
		const one = kits("A,bag set,in_service,,");
		expect(entryOf("kits").write(one, "1")).toBe(one);
		expect(entryOf("kits").write(one, "1.5")).toContain("allowed");
	});
});
