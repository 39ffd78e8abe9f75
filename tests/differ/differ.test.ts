import { expect, test } from "vitest";
import { plan } from "../../src/core/plan/plan.ts";
import { anyWorkbook } from "./anyWorkbook.ts";
import { differ } from "./differ.ts";

test("plans are the same by another clock, in another language, with rows in another order", () => {
	expect(differ(3, 1)).toEqual([]);
}, 120_000);

test("some of the invented workbooks make a whole plan, others do not", () => {
	const made = Array.from({ length: 8 }, (_, i) => plan(anyWorkbook(i + 1)).made);
	expect(new Set(made)).toEqual(new Set([true, false]));
}, 60_000);
