import { expect, test } from "vitest";
import { type DescalingRound, sinceDescaling } from "../../../src/core/record/sinceDescaling.ts";

const round = (date: string, descaled: "yes" | "no" = "no", start = 420): DescalingRound => ({
	date,
	start,
	descaled,
});

test.each<[string, DescalingRound[], string | undefined, number, string | undefined]>([
	["no record", [], undefined, 0, undefined],
	["no descaling on record", [round("2027-02-20"), round("2027-02-21")], undefined, 2, undefined],
	[
		"one on record",
		[round("2027-02-20"), round("2027-02-21", "yes"), round("2027-02-22")],
		undefined,
		1,
		"2027-02-21",
	],
	[
		"in any order",
		[round("2027-02-22"), round("2027-02-21", "yes"), round("2027-02-20")],
		undefined,
		1,
		"2027-02-21",
	],
	[
		"in any order, at whatever hour of its day",
		[round("2027-02-22", "no", 420), round("2027-02-21", "yes", 1260)],
		undefined,
		1,
		"2027-02-21",
	],
	[
		"two rounds of its day",
		[
			round("2027-02-21", "yes", 840),
			round("2027-02-21", "no", 1260),
			round("2027-02-21", "no", 420),
		],
		undefined,
		1,
		"2027-02-21",
	],
	["the settings alone", [], "2027-02-15", 0, "2027-02-15"],
	[
		"the settings, with rounds since",
		[round("2027-02-15"), round("2027-02-16")],
		"2027-02-15",
		1,
		"2027-02-15",
	],
	[
		"the settings before the record",
		[round("2027-02-20", "yes"), round("2027-02-22")],
		"2027-02-15",
		1,
		"2027-02-20",
	],
	[
		"the settings after the record",
		[round("2027-02-20", "yes"), round("2027-02-22"), round("2027-02-25")],
		"2027-02-24",
		1,
		"2027-02-24",
	],
	[
		"the settings of the same day as the record, which knows the hour",
		[round("2027-02-20", "yes", 840), round("2027-02-20", "no", 1260), round("2027-02-22")],
		"2027-02-20",
		2,
		"2027-02-20",
	],
	[
		"rounds of the plan do not count",
		[round("2027-02-28"), round("2027-03-01", "yes")],
		undefined,
		1,
		undefined,
	],
])("%s", (_, rounds, lastDescaledOn, since, lastOn) => {
	expect(sinceDescaling(rounds, lastDescaledOn, "2027-03-01")).toEqual({ rounds: since, lastOn });
});
