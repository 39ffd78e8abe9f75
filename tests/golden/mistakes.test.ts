import { readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { plan } from "../../src/core/plan/plan.ts";
import { expectGolden } from "./expectGolden.ts";
import { mistakes } from "./mistakes.ts";

/** What a plan says of what is wrong with what is written down, word for word and place by place, as it was last read. */
const GOLDEN = "tests/golden/mistakes";
const fileOf = (name: string) => `${name.replace(/\W+/g, "-")}.json`;

test.each(Object.entries(mistakes))("%s", (name, workbook) => {
	const said = plan(workbook).problems.map(
		({ file, line, column, weight, code, received, allowed, message }) =>
			[file, line ?? "", column, weight, code, received, allowed, message].join(" | "),
	);
	expectGolden(join(GOLDEN, fileOf(name)), said);
});

test("no file is left of a unit that is not tried any more", () => {
	expect(readdirSync(GOLDEN)).toEqual(Object.keys(mistakes).map(fileOf).sort());
});
