import { expect, test } from "vitest";
import { isKept } from "../../../../src/core/plan/kits/kindFigures.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { smallUnit } from "../../smallUnit.ts";

test("what is for single use is not kept, of its own kind and piece alone", () => {
	const read = readWorkbook(
		smallUnit({
			"kinds.csv": "kind,piece,count\nbag set,bag,1\nbag set,mask,2\nother,mask,1",
			"kits.csv": "kit,kind,status\nA,bag set,in_service\nB,other,in_service",
			"treatments.csv": "kind,piece,method,note\nbag set,mask,single_use,",
		}),
	);
	const kept = isKept(read, "");
	expect(read.tables.kinds.rows.map(({ value }) => kept(value))).toEqual([true, false, true]);
});
