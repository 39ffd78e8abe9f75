import { describe, expect, test } from "vitest";
import type { Figure } from "../../../src/core/calculation.ts";
import type { Strength } from "../../../src/core/chlorine/availableChlorine.ts";
import { lastUsableDay } from "../../../src/core/chlorine/lastUsableDay.ts";
import { addDays, dayNumber } from "../../../src/core/values/date.ts";
import { figure, missing } from "../answerOf.ts";

const FIRST = "2027-02-20";
/** A liquid that has 0.5 % until the day given and less from then on. */
const until =
	(day: string) =>
	(now: string): Figure<Strength> =>
		figure({ form: "liquid", gramsPerLitre: now <= day ? 5 : 4.999 });
const lasting = until("9999-12-31");

describe("the last day on which a lot is strong enough and in date", () => {
	test.each([
		["it fades first, in the next month", until("2027-03-05"), "2027-12-31", "2027-03-05"],
		["it fades within a day", until(FIRST), null, FIRST],
		["on a leap day", until("2028-02-29"), "2028-03-31", "2028-02-29"],
		["it expires first", lasting, "2027-03-01", "2027-03-01"],
		["it expires on the first day", lasting, FIRST, FIRST],
		["it fades, and has no expiry", until("2029-01-31"), null, "2029-01-31"],
		["after almost ten years", until(addDays(FIRST, 3649)), null, addDays(FIRST, 3649)],
	])("%s", (_what, strengthOn, expires, last) => {
		expect(lastUsableDay(strengthOn, 0.5, FIRST, expires)).toBe(last);
	});

	test.each([
		["too weak already", until("2027-02-19"), null],
		["out of date already", lasting, "2027-02-19"],
	])("there is none where it is %s", (_what, strengthOn, expires) => {
		expect(lastUsableDay(strengthOn, 0.5, FIRST, expires)).toBeUndefined();
	});

	test("no end in sight for one that neither fades nor expires", () => {
		expect(lastUsableDay(lasting, 0.5, FIRST, null)).toBeNull();
		const tablets = () => figure<Strength>({ form: "tablet", gramsPerTablet: 0.001 });
		expect(lastUsableDay(tablets, 0.5, FIRST, null)).toBeNull();
	});

	test("a powder goes by its percentage", () => {
		const powder = (now: string) =>
			figure<Strength>({ form: "powder", gramsPerGram: now <= "2027-04-30" ? 0.005 : 0.00499 });
		expect(lastUsableDay(powder, 0.5, FIRST, null)).toBe("2027-04-30");
	});

	test("a strength that cannot be worked out is not called too weak", () => {
		expect(lastUsableDay(() => missing("bad-cell"), 0.5, FIRST, "2027-03-01")).toBe("2027-03-01");
	});

	test("it is found without looking at every day", () => {
		let looked = 0;
		lastUsableDay(
			(day) => {
				looked++;
				return until("2031-01-01")(day);
			},
			0.5,
			FIRST,
			null,
		);
		expect(looked).toBeLessThan(20);
		expect(dayNumber("2031-01-01")).toBeGreaterThan(dayNumber(FIRST) as number);
	});
});
