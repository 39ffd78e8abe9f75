import { expect, test } from "vitest";
import { Store } from "../../../../src/ui/state/store.ts";
import { mixesOfFirstDay, mixOfDays, whyNoMix } from "../../../../src/ui/subjects/mixing/mix.ts";
import { storeOf } from "../../../../src/ui/subjects/mixing/strengthView.ts";
import { smallUnit } from "../../../core/smallUnit.ts";

const typed = (form: string, strength: number, measure: string, confirmed = "") =>
	new Store(
		smallUnit({
			"chlorine.csv": `product,form,strength,strength_measure,fade_factor,loss_points_per_year,in_use,label_confirmed
				${form === "tablet" ? "tablets" : form},${form},${strength},${measure},0,0,yes,${confirmed}`,
		}),
	).state;

const slips = [
	["35 g/L as %", "liquid", 35, "pct_w_v", /35 g\/L would be 3\.5 %/],
	["48 degrees as %", "liquid", 48, "pct_w_v", /48 degrees/],
	["a share for 70 %", "powder", 0.7, "pct_w_w", /0\.7 would be 70 %/],
	["1,670 mg as grams", "tablet", 1670, "g_per_tablet", /1670 mg would be 1\.67 g/],
] as const;

test.each(slips)(
	"%s: the page mixes nothing and says why",
	(_what, form, strength, measure, why) => {
		const state = typed(form, strength, measure);
		expect(mixesOfFirstDay(state)).toEqual([]);
		expect(mixOfDays(state).every(({ mix }) => mix === undefined)).toBe(true);
		expect(whyNoMix(state)).toMatch(why);
		const confirmed = typed(form, strength, measure, "yes");
		expect(mixesOfFirstDay(confirmed)[0]?.quantity).toBeGreaterThan(0);
		expect(whyNoMix(confirmed)).toBe("");
	},
);

test("a lot made after today, by the page's clock: nothing is mixed from it, no curve is drawn, and the page says why", () => {
	const workbook = smallUnit({
		"lots.csv": "item,lot,quantity,made_on\nliquid,L,10,2027-02-21",
	});
	const on = (today: string) => new Store(workbook, () => today).state;
	expect(mixesOfFirstDay(on("2027-02-21"))[0]).toMatchObject({ lot: "L" });
	expect(mixesOfFirstDay(on("2027-02-20"))).toEqual([]);
	expect(whyNoMix(on("2027-02-20"))).toContain("today is Sat 20 Feb");
	const pointsOn = (today: string) => storeOf(on(today))?.curves[0]?.points;
	expect(pointsOn("2027-02-21")).not.toEqual([]);
	expect(pointsOn("2027-02-20")).toEqual([]);
});
