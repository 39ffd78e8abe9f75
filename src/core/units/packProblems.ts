import { type Place, type Problem, problem } from "../problem.ts";
import { say } from "../say.ts";

/** Nobody says how much is in a pack. */
export function noPackSize(place: Place, item: string): Problem {
	return problem(place, {
		code: "no-pack-size",
		received: "",
		allowed: say`a pack size, or packs and the quantity they come to`,
		message: say`No unit's file says how much of ${item} is in a pack, so packs cannot be counted.`,
	});
}

/** Packs of several sizes under one name. */
export function severalSizes(sizes: Iterable<number>): string {
	return say`The units name packs of ${[...sizes].map((size) => say`${size}`).join(", ")}; the largest is used.`;
}
