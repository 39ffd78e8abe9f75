import { say } from "../say.ts";

/** What a check found, worked out and never typed: the kit fit for use, or the first thing that is wrong with it. */
export type Finding = "passed" | "incomplete" | "in_repair" | "not_clean";

export interface Checked {
	readonly found: Finding;
	/** Pieces short of the kind's list. */
	readonly missing: number;
	/** Why, in words; "" where the kit is ready. */
	readonly reason: string;
}

const tests = {
	bag_refills: say`the bag does not refill`,
	valve_moves: say`the valve does not move`,
	seal_holds: say`the seal does not hold`,
	relief_opens: say`the pressure-relief valve does not open`,
	suction_holds: say`the suction does not hold`,
} as const;

type Judged = "yes" | "no" | null;

/** What was found when a kit was put together; null where it was not looked at or does not apply. */
export interface Check extends Readonly<Record<keyof typeof tests, Judged>> {
	readonly pieces_counted: number | null;
	readonly clean: Judged;
	/** Seen on any piece: torn, cracked, sticky, gone cloudy. */
	readonly damage: Judged;
}

/**
 * The result of a readiness check against the kind's list of pieces.
 *
 * Too few pieces: incomplete. A failed function test or damage: in repair. Not clean
 * alone: back to a round. One failure is enough, whatever was not looked at any more. Only a
 * kit that passes all of them is fit for use. A test left blank does not apply to the kit.
 * Undefined where nothing failed and the check was not finished: pieces not counted, more
 * counted than listed, cleanliness not judged; or where nobody knows how many are listed.
 *
 * @param listed pieces of the kind's list; undefined where it cannot be read
 * @example 11 of 12 pieces counted → incomplete, 1 missing
 */
export function checkResult(check: Check, listed: number | undefined): Checked | undefined {
	const counted = check.pieces_counted;
	const missing = counted === null || listed === undefined ? 0 : Math.max(0, listed - counted);
	if (missing > 0)
		return { found: "incomplete", missing, reason: say`${missing} of ${listed} pieces missing` };
	const failed = Object.entries(tests).find(([test]) => check[test as keyof typeof tests] === "no");
	if (failed) return { found: "in_repair", missing, reason: failed[1] };
	if (check.damage === "yes") return { found: "in_repair", missing, reason: say`damage was seen` };
	if (check.clean === "no") return { found: "not_clean", missing, reason: say`not clean` };
	if (counted === null || listed === undefined || check.clean === null) return undefined;
	if (counted > listed) return undefined;
	return { found: "passed", missing, reason: "" };
}
