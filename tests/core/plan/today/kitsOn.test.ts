import { expect, test } from "vitest";
import { valueIn } from "../../../../src/core/outcome.ts";
import { kitsOn } from "../../../../src/core/plan/today/kitsOn.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { smallUnit } from "../../smallUnit.ts";

const used = { "uses.csv": "at,kit,what,by,note\n2027-03-03 04:10,A,used,," };
const stands = (day: string, changes: Record<string, string> = {}) =>
	kitsOn(readWorkbook(smallUnit(changes)), day).map((row) =>
		[valueIn(row.kit), valueIn(row.state), valueIn(row.use_next)].join(" "),
	);

test("a kit stands as it does on the day that is asked for, not on the plan's first", () => {
	expect(stands("2027-03-03")).toEqual([
		"A ready 1",
		"B ready 2",
		"C to_reprocess ",
		"D out_of_service ",
	]);
	expect(stands("2027-03-03", used)[0]).toBe("A to_reprocess ");
	expect(stands("2027-03-02", used)[0]).toBe("A ready 1");
	expect(stands("2027-03-07").slice(0, 2)).toEqual(["A to_reprocess ", "B ready 1"]);
});
