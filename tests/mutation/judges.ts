import { globSync } from "node:fs";

const TESTS = [
	"tests/core/**/*.test.ts",
	"tests/golden/*.test.ts",
	"tests/differ/invented.test.ts",
	"tests/reference/**/*.test.ts",
	"tests/properties/**/*.test.ts",
];
const NOT = new RegExp(
	[
		"clockChange|expectWithin|edits|typedSheets",
		"[sS]imulation|planIsWhole|rowOrder|moreNeedsMore|dailyBirths|longTotals|longUse|played",
		"wholeRegisters|weekOfDays|properties.(orders|registers|level|forecast|chlorineAndKits)",
	].join("|"),
);

/**
 * Test files that judge src/core. Left out are the clock change, which sets the zone of the whole
 * process; expectWithin, which judges the tests themselves; edits, which loads the core afresh by
 * itself, as is done here for each mutant; typedSheets, which asks what lies in the folder; and
 * those that try whole plans or play days by the hundred, which would take seconds for each of
 * thousands of mutants. That can only let a mutant live.
 */
export function judges(folder: string, patterns: readonly string[] = TESTS): string[] {
	return patterns
		.flatMap((pattern) => globSync(pattern, { cwd: folder }))
		.filter((file) => !NOT.test(file));
}
