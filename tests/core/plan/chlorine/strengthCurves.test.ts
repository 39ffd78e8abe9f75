import { describe, expect, test } from "vitest";
import { valueIn } from "../../../../src/core/outcome.ts";
import { type StoreLots, storeLots } from "../../../../src/core/plan/chlorine/storeLots.ts";
import { strengthCurves } from "../../../../src/core/plan/chlorine/strengthCurves.ts";
import { addDays } from "../../../../src/core/values/date.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { smallUnit } from "../../smallUnit.ts";

const chlorine = `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use
	liquid,liquid,5,pct_w_v,,1.3,,yes
	powder,powder,70,pct_w_w,,,2,no
	tablets,tablet,1.5,g_per_tablet,,,,no`;
const FIRST_DAY = "2027-03-01";

function storeOf(lots: string[], readings: string[] = [], products = chlorine): StoreLots {
	const store = storeLots(
		smallUnit({
			"chlorine.csv": products,
			"lots.csv": ["item,lot,quantity,made_on,received_on,arrives_on,expires_on", ...lots].join(
				"\n",
			),
			"strength-readings.csv": ["item,lot,read_on,strength_pct,method,note", ...readings].join(
				"\n",
			),
		}),
	);
	if (!store) throw new Error("the small unit has a first day and a strength wanted");
	return store;
}

const fresh = "liquid,L1,10,2026-12-01,,,2027-07-10";

describe("the strength of a lot over the coming months", () => {
	test("falls day by day to its last usable day, in the label's own measure", () => {
		const store = storeOf([fresh]);
		const [curve] = strengthCurves(store);
		expect(curve).toMatchObject({
			lot: "L1",
			labelled: 5,
			wanted: 0.5,
			lastUsableDay: "2027-07-10",
			endsBy: "expiry",
		});
		expect(curve?.points[0]?.day).toBe(FIRST_DAY);
		expect(curve?.points[1]?.day).toBe(addDays(FIRST_DAY, 7));
		expect(curve?.points.at(-1)?.day).toBe("2027-07-10");
		const strengths = curve?.points.map((point) => point.strength) ?? [];
		expect(strengths.every((s, at) => at === 0 || s < (strengths[at - 1] as number))).toBe(true);
		const figure = valueIn(store.lots[0]?.strengthOn(FIRST_DAY) as never) as unknown as {
			gramsPerLitre: number;
		};
		expectWithin(strengths[0], figure.gramsPerLitre / 10, 1e-12, "%");
	});

	test("a lot on its way begins when it arrives", () => {
		const [curve] = strengthCurves(storeOf(["liquid,L2,10,2027-02-01,,2027-03-20,2027-07-10"]));
		expect(curve?.points[0]?.day).toBe("2027-03-20");
	});

	test.each([
		["on its day", "liquid,L2,10,2027-02-01,,2027-02-20,2027-07-10"],
		["before its day", "liquid,L2,10,2027-02-01,2027-02-20,2027-03-20,2027-07-10"],
	])("one that came %s begins with the plan", (_, lot) => {
		const [curve] = strengthCurves(storeOf([lot]));
		expect(curve?.points[0]?.day).toBe(FIRST_DAY);
	});

	test("a lot that outlasts the picture ends at the horizon, and tablets keep what they hold", () => {
		const [curve] = strengthCurves(storeOf(["tablets,T1,9,2026-12-01,,,2029-12-01"]));
		expect(curve).toMatchObject({ wanted: undefined, lastUsableDay: "2029-12-01" });
		expect(curve?.points.at(-1)).toEqual({ day: addDays(FIRST_DAY, 365), strength: 1.5 });
	});

	test("one with no end in sight ends at the horizon too", () => {
		const [curve] = strengthCurves(storeOf(["tablets,T1,9,2026-12-01,,,"]));
		expect(curve).toMatchObject({ lastUsableDay: null, endsBy: undefined });
		expect(curve?.points.at(-1)).toEqual({ day: addDays(FIRST_DAY, 365), strength: 1.5 });
	});

	test("one whose label says nothing of its strength has no curve; the others keep theirs", () => {
		// By weight, without the density that it takes.
		const unknown = chlorine.replace("liquid,liquid,5,pct_w_v", "liquid,liquid,5,pct_w_w");
		const curves = strengthCurves(storeOf([fresh, "tablets,T1,9,2026-12-01,,,"], [], unknown));
		expect(curves.map(({ product }) => product)).toEqual(["tablets"]);
	});

	test("a lot that fades below the strength wanted ends by its strength", () => {
		const weak = chlorine.replace("liquid,liquid,5,pct_w_v,,1.3", "liquid,liquid,0.502,pct_w_v,,5");
		const [curve] = strengthCurves(storeOf(["liquid,L1,10,2027-03-01,,,2028-07-10"], [], weak));
		expect(curve?.endsBy).toBe("strength");
		expect(String(curve?.lastUsableDay) < "2027-06-01").toBe(true);
	});

	test("a lot that is not usable has no points, and no end to wait for", () => {
		const [curve] = strengthCurves(storeOf(["liquid,L1,10,2026-12-01,,,2027-02-10"]));
		expect(curve).toMatchObject({ points: [], lastUsableDay: undefined, endsBy: undefined });
	});
});

describe("readings beside the curve", () => {
	test("carry the range that they still agree with, and the curve reaches back to them", () => {
		const [curve] = strengthCurves(
			storeOf(
				[fresh],
				[
					"liquid,L1,2027-02-20,4,titration,",
					"liquid,L1,2027-02-10,4,strip,",
					"liquid,L9,2027-02-11,1,strip,",
					"powder,L1,2027-02-12,60,strip,",
				],
			),
		);
		expect(curve?.readings.map(({ day }) => day)).toEqual(["2027-02-10", "2027-02-20"]);
		expectWithin(curve?.readings[0]?.low, 4 / 1.48, 1e-12, "%");
		expectWithin(curve?.readings[0]?.high, 4 / 0.52, 1e-12, "%");
		expectWithin(curve?.readings[1]?.high, 4 / 0.876, 1e-12, "%");
		expect(curve?.points[0]?.day).toBe("2027-02-10");
		const days = curve?.points.map(({ day }) => day) ?? [];
		expect(days).toContain(FIRST_DAY);
		expect(days).toEqual([...days].sort());
	});

	test("one from a quarter before the plan is shown, one from a day earlier is not", () => {
		// 92 days before 1 March 2027 is 29 November 2026.
		const [curve] = strengthCurves(
			storeOf(
				["liquid,L1,10,2026-10-01,,,2027-07-10"],
				["liquid,L1,2026-11-28,4.8,titration,", "liquid,L1,2026-11-29,4.7,titration,"],
			),
		);
		expect(curve?.readings.map(({ day }) => day)).toEqual(["2026-11-29"]);
	});

	test("one taken later stands where it was taken, on a curve from the plan's first day; one beyond the picture is left out", () => {
		const late = addDays(FIRST_DAY, 366);
		const [curve] = strengthCurves(
			storeOf(
				["liquid,L1,10,2026-12-01,,,2029-07-10"],
				[`liquid,L1,${late},1,strip,`, "liquid,L1,2027-03-10,4,strip,"],
			),
		);
		expect(curve?.readings.map(({ day }) => day)).toEqual(["2027-03-10"]);
		expect(curve?.points[0]?.day).toBe(FIRST_DAY);
	});

	test.each([
		["one from before it was made: from when it was", "2027-02-15,", "2027-02-15"],
		["one from before it came, where that is all that is known", ",2027-02-15", "2027-02-15"],
		["one of a lot of unknown age: from the reading", ",", "2027-02-10"],
	])("of several, the first leads; %s", (_, ages, day) => {
		const lot = `liquid,L1,10,${ages},,2027-07-10`;
		const [curve] = strengthCurves(storeOf([lot], ["liquid,L1,2027-02-10,4,strip,"]));
		expect(curve?.points[0]?.day).toBe(day);
	});
});
