import { say } from "../../core/say.ts";
import { MINUTES_PER_HOUR } from "../../core/values/clock.ts";

/** A length of time for reading, in whole minutes: "45 min", "7 h", "7 h 15 min". Rounded up, so that it is never too short. */
export function shownMinutes(minutes: number): string {
	const whole = Math.ceil(minutes - 1e-9);
	const hours = Math.floor(whole / MINUTES_PER_HOUR);
	const rest = whole % MINUTES_PER_HOUR;
	if (hours === 0) return say`${rest} min`;
	return rest === 0 ? say`${hours} h` : say`${hours} h ${rest} min`;
}
