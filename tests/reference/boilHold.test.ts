import { describe, expect, test } from "vitest";
import { sources } from "../../src/core/sources.ts";
import { HIGH_UP_M, holdAtBoil } from "../../src/core/water/holdAtBoil.ts";
import { answerOf } from "../core/answerOf.ts";
import { expectWithin } from "../expectWithin.ts";
import { type Printed, printed } from "./referenceCase.ts";

/** What a body asks for drinking water, and its words where the source is shown. */
interface Rule {
	readonly body: string;
	readonly minutes: number;
	/** Minutes above a height in m. */
	readonly above?: readonly [metres: number, minutes: number];
	readonly said: RegExp;
	readonly source: Printed;
}
const table = printed("Emerging Infectious Diseases 31(8), 2025", "table 1");
const rules: readonly Rule[] = [
	{ body: "WHO", minutes: 0, said: /WHO none;/, source: table },
	{
		body: "CDC",
		minutes: 1,
		above: [1981, 3],
		said: /CDC 1 min, 3 above 1\u202f981 m;/,
		source: table,
	},
	{
		body: "EPA",
		minutes: 1,
		above: [1524, 3],
		said: /EPA 1, 3 above 1\u202f524 m;/,
		source: table,
	},
	{
		body: "Health Canada",
		minutes: 1,
		above: [2000, 2],
		said: /Health Canada 1, 2 above 2\u202f000 m/,
		source: table,
	},
	{
		body: "Philippines",
		minutes: 2,
		said: /Philippines, Department of Health: 2 minutes/,
		source: printed("Philippines, Department of Health, health advisory on water", "doh.gov.ph"),
	},
];
const named = (body: string) => rules.find((rule) => rule.body === body) as Rule;
const asked = ({ minutes, above = [Infinity, minutes] }: Rule, altitudeM: number) =>
	altitudeM > above[0] ? above[1] : minutes;
const blank = (altitudeM: number) => answerOf(holdAtBoil, { altitudeM });
const { place, disagreement } = sources.boilHold;
const shown = `${place}\n${disagreement}`;

describe("what each body asks is shown beside the setting", () => {
	test.each(rules)("$body ($source.mark)", ({ said }) => {
		expect(shown).toMatch(said);
	});
});

describe("the check table of the notes, and what a blank setting takes there", () => {
	test.each([
		["C16", "CDC", 1500, 1, 1],
		// The contract draws its line at 2,000 m, CDC at 1,981: shown as a disagreement, not followed.
		["C17", "CDC", 2000, 3, 1],
		["C19", "Health Canada", 2100, 2, 3],
		["C20", "WHO", 2100, 0, 3],
	])("%s: %s at %d m asks %d min, blank is %d", (_id, body, altitudeM, minutes, ours) => {
		expect(asked(named(body), altitudeM)).toBe(minutes);
		expectWithin(blank(altitudeM), ours, 0, "min");
	});
});

test("a blank setting takes less than a body asks just where the disagreement says so", () => {
	const heights = Array.from({ length: 5501 }, (_, altitudeM) => altitudeM);
	const short = rules.flatMap((rule) => {
		const there = heights.filter((altitudeM) => blank(altitudeM) < asked(rule, altitudeM));
		return there.length === 0 ? [] : [[rule.body, there[0], there.at(-1)]];
	});
	expect(short).toEqual([
		["CDC", 1982, HIGH_UP_M],
		["EPA", 1525, HIGH_UP_M],
		["Philippines", 0, HIGH_UP_M],
	]);
	expect(disagreement).toMatch(
		/^Left blank, the plan takes 1 minute up to 2\u202f000 m, where EPA says 3 above 1\u202f524 m and CDC 3 above 1\u202f981 m\. Philippines/,
	);
	expect(HIGH_UP_M).toBe(2000);
});
