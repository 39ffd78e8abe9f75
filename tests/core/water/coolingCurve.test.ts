import { expect, test } from "vitest";
import { celsiusAfter, coolingCurve } from "../../../src/core/water/coolingCurve.ts";
import { coolingMinutes } from "../../../src/core/water/coolingMinutes.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf } from "../answerOf.ts";

const pot = { fromC: 98.5, roomC: 25, coolingPerHour: 0.25, potLitres: 20 };

test("the curve passes the wanted temperature just when the plan says the water is cool", () => {
	const minutes = answerOf(coolingMinutes, { ...pot, toC: 37 });
	expectWithin(celsiusAfter(pot, minutes / 60), 37, 1e-9, "°C");
});

test("it begins at the boil, ends at the hours asked for, and never falls below the room", () => {
	const curve = coolingCurve(pot, 100);
	expect(curve[0]).toEqual({ hours: 0, celsius: 98.5 });
	expect(curve.at(-1)?.hours).toBe(100);
	expect(curve.every(({ celsius }) => celsius >= pot.roomC)).toBe(true);
});
