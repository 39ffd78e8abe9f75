import { rateOfPot } from "./coolingMinutes.ts";

const POINTS = 60;

/** A covered pot from the boil on: temperatures in °C, rate of a 10 L pot per hour. */
export interface CoolingPot {
	readonly fromC: number;
	readonly roomC: number;
	readonly coolingPerHour: number;
	readonly potLitres: number;
}

/** Temperature of the water some hours after the boil, °C (Newton cooling). */
export function celsiusAfter(pot: CoolingPot, hours: number): number {
	const rate = rateOfPot(pot.coolingPerHour, pot.potLitres);
	return pot.roomC + (pot.fromC - pot.roomC) * Math.exp(-rate * hours);
}

/** The temperatures from the boil to so many hours after it, for a picture. */
export function coolingCurve(pot: CoolingPot, hours: number) {
	return Array.from({ length: POINTS + 1 }, (_, point) => {
		const at = (hours * point) / POINTS;
		return { hours: at, celsius: celsiusAfter(pot, at) };
	});
}
