import { expect, test } from "vitest";
import { shortStepAdvice } from "../../../../src/core/plan/methods/shortStepAdvice.ts";
import { unitFigures } from "../../../../src/core/plan/unitFigures.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { unitWith } from "../../smallUnit.ts";
import { wholeProblems } from "../../wholeProblems.ts";

const FIRST = "2027-03-01";
const steps = (...lines: string[]) => ["step,basis,minutes,hands_on,method", ...lines].join("\n");
const boil = (minutes: number) => `boil,load,${minutes},no,boiling`;

/** What is said of the loads of pieces: code, place, and what was found. */
function said(settings: Record<string, string | number>, lines: string) {
	const workbook = unitWith({ method: "boiling", heat_kw: 3, ...settings }, { "steps.csv": lines });
	const unit = unitFigures(readWorkbook(workbook), FIRST, FIRST);
	return wholeProblems(shortStepAdvice(unit)).map(({ code, file, column, received }) =>
		[code, file, column, received].join(" "),
	);
}

test.each<[string, Record<string, string | number>, string, string[]]>([
	["long enough with the heating", {}, steps(boil(20), "heat,load,60,no,"), []],
	["long enough in one step", {}, steps(boil(80)), []],
	[
		"the heating left out",
		{},
		steps(boil(20)),
		["heating-left-out steps.csv minutes 20 minutes a load"],
	],
	[
		"a longer step beside one that is too short",
		{},
		steps(boil(19), "heat,load,60,no,boiling"),
		[],
	],
	[
		"every step too short, together long enough",
		{ disinfect_boil_minutes: 30 },
		steps(...Array.from({ length: 5 }, (_, at) => `again ${at},load,20,no,boiling`)),
		["short-boil steps.csv minutes 20 minutes"],
	],
	[
		"no step by the load, one of another method, one by the round",
		{},
		steps("soak,load,90,no,chlorine", "boil,round,90,no,boiling"),
		["short-boil steps.csv minutes no step counted by load"],
	],
	[
		"steam",
		{ method: "steam" },
		steps("steam,load,5,no,steam"),
		[
			"short-steam steps.csv minutes 5 minutes",
			"heating-left-out steps.csv minutes 5 minutes a load",
		],
	],
	["a small pot", { pot_litres: 4 }, steps(boil(80)), ["pot-too-small unit.csv pot_litres 5 L"]],
	["a fire that nobody can read", { heat_kw: "lots" }, steps(boil(1)), []],
	["no steps", {}, steps(), []],
	["nothing boiled", { method: "chlorine" }, steps("soak,load,1,no,"), []],
])("%s", (_, settings, lines, expected) => {
	expect(said(settings, lines)).toEqual(expected);
});

test.each([
	["boiling", "disinfect_boil_minutes", /^The steps of a load that is boiled last/],
	["steam", "steam_minutes", /^The steps of a load that is steamed last/],
])(
	"of %s, a minute less than the heating takes is said, just as long is not",
	(method, key, words) => {
		const heated = (minutes: number) => {
			const lines = steps(`keep,load,${minutes},no,${method}`);
			const settings = { method, heat_kw: 3, [key]: 1 };
			const unit = unitFigures(
				readWorkbook(unitWith(settings, { "steps.csv": lines })),
				FIRST,
				FIRST,
			);
			return shortStepAdvice(unit).filter(({ code }) => code === "heating-left-out");
		};
		const [found] = heated(1);
		const needed = Number(found?.allowed.match(/\d+/)?.[0]);
		expect(needed).toBeGreaterThan(2);
		expect(heated(needed)).toEqual([]);
		expect(heated(needed - 1)[0]?.message).toMatch(words);
	},
);
