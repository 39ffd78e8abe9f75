import { describe, expect, test } from "vitest";
import { digest } from "../../../src/core/merge/digest.ts";
import { tableOf } from "../smallUnit.ts";

describe("workbooks are known by their texts", () => {
	const of = (text: string, file = "kits.csv") => digest({ [file]: tableOf(text) });
	const known = of("kit,note\nA,torn\nB,");

	/** It stands in files that were saved: another way of working it out would not know them again. */
	test("as they were known ever since", () => {
		expect(known).toBe("0u3yv8c1axc9br");
	});

	test("blanks at the end of a row, and the order of sheets, are the same", () => {
		expect(of("kit,note\nA,torn\nB")).toBe(known);
		const [one, other] = [tableOf("a\n1"), tableOf("b\n2")];
		expect(digest({ x: one, y: other })).toBe(digest({ y: other, x: one }));
	});

	test.each([
		["kit,note\nA,torn\nB,", "uses.csv"],
		["kit,note\nA,torn"],
		["kit,note\nA,\nB,torn"],
		["kit,note\nA,tor\nBn,"],
		["kit,note\n,A\nB,torn"],
		["kitnote\nA,torn\nB,"],
	])("%j is another", (text, file?: string) => {
		expect(of(text, file)).not.toBe(known);
	});
});
