import { describe, expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { sharesFromTimes } from "../../../src/core/rounds/sharesFromTimes.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf } from "../answerOf.ts";
import { columnOf } from "../contentOf.ts";
import { unitWith } from "../smallUnit.ts";

const shares = (times: readonly number[]) => answerOf(sharesFromTimes, { times });
const sum = (parts: readonly number[]) => parts.reduce((all, part) => all + part, 0);

describe("shares of the hours from recorded times", () => {
	test.each([
		["one birth hardly moves a flat day", [190], 3, 11 / 241],
		["and leaves the other hours alike", [190], 4, 10 / 241],
		["the last minute of an hour is in it", [239], 3, 11 / 241],
		["the full hour begins the next", [240], 4, 11 / 241],
		["midnight is in the first", [0], 0, 11 / 241],
		["as many at one hour as a flat day counts for", Array(240).fill(600), 10, 250 / 480],
		["none recorded: a flat day", [], 7, 1 / 24],
	])("%s", (_what, times, hour, share) => {
		expectWithin(shares(times)[hour], share, 1e-12, "share");
		expect(shares(times)).toHaveLength(24);
		expectWithin(sum(shares(times)), 1, 1e-12, "share");
	});

	test("come close to what was recorded once that is much", () => {
		expectWithin(shares(Array(24_000).fill(600))[10], 1, 0.01, "share");
	});
});

describe("in the plan", () => {
	const records = "date,births,kits_used,times\n2027-02-01,400,,";
	const at = (time: string, births = 400) => ({
		"records.csv": `${records}${Array(births).fill(time).join(" ")}`,
	});
	const noneReady = (changes: Record<string, string>) =>
		columnOf(
			plan(unitWith({ births_from_register: "no" }, changes)),
			"day-cover.csv",
			"none_ready_per_1000",
		).map(Number);

	test("births recorded in the small hours make the hours before the morning round weak", () => {
		const [flat, nightly] = [noneReady({}), noneReady(at("03:10"))];
		expect(nightly[6]).toBeGreaterThan(flat[6] as number);
		expect(nightly[12]).toBeLessThan(flat[12] as number);
	});

	test("the unit's own weights go before the register", () => {
		const weights = {
			"hours.csv": `hour,share\n${Array.from({ length: 24 }, (_, h) => `${h},1`).join("\n")}`,
		};
		noneReady({ ...at("03:10"), ...weights }).forEach((none, hour) => {
			expectWithin(none, noneReady({})[hour] as number, 1e-9, "per 1,000");
		});
	});

	test("a register without times leaves a flat day", () => {
		expect(noneReady({ "records.csv": records })).toEqual(noneReady({}));
	});
});
