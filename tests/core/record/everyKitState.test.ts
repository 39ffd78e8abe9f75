import { expect, test } from "vitest";
import { type KitEvent, kitState } from "../../../src/core/record/kitState.ts";
import { at, check, listed, round } from "./kitEvents.ts";

const LIFE_DAYS = 7;

/** At equal times the unsafe one wins: it comes last. */
const RANKS = { listed_ready: 0, reprocessed: 1, used: 4, opened: 4 };
const RANKS_OF_CHECKS = { passed: 2, not_clean: 5, incomplete: 6, in_repair: 7 };

/** The events of one month, newest first. */
function newestFirst(events: readonly KitEvent[]): KitEvent[] {
	const place = (e: KitEvent) =>
		(Number(e.at.date.slice(-2)) * 10_000 + e.at.minutes) * 10 +
		(e.what === "checked" ? RANKS_OF_CHECKS[e.found] : RANKS[e.what]);
	return events
		.map((event) => ({ event, place: place(event) }))
		.sort((a, b) => a.place - b.place)
		.map(({ event }) => event)
		.reverse();
}

/**
 * The same rules said another way, as answers to questions that look back from the end:
 * nothing is carried along from event to event.
 *
 * @param past newest first
 */
function byLookingBack(past: readonly KitEvent[], day: string): string {
	const isBad = (e: KitEvent) =>
		e.what === "used" || e.what === "opened" || (e.what === "checked" && e.found !== "passed");
	const makesReady = (e: KitEvent) =>
		e.what === "listed_ready" ||
		(e.what === "checked" && e.found === "passed" && e.purpose === "stands_for_round");
	const isOfRound = (e: KitEvent) =>
		e.what === "checked" && e.found === "passed" && e.purpose === "after_round";
	// A failure stands until the register says ready, or a round's own check has passed.
	const failure = past.findIndex(
		(e) => e.what === "checked" && (e.found === "incomplete" || e.found === "in_repair"),
	);
	const failed = past[failure];
	const after = past.slice(0, Math.max(0, failure));
	const isOver = after.some(
		(e, i) =>
			makesReady(e) ||
			(isOfRound(e) &&
				after.slice(i + 1).find((b) => isBad(b) || b.what === "reprocessed")?.what ===
					"reprocessed"),
	);
	if (failed?.what === "checked" && !isOver)
		return after.some((e) => e.what === "reprocessed")
			? "to_reprocess, out"
			: `${failed.found}, out`;
	const bad = past.findIndex(isBad);
	const since = bad < 0 ? past : past.slice(0, bad);
	// Newest first: the latest event that began a new life, since the last bad thing.
	const born = since.findIndex((e) => e.what === "reprocessed" || makesReady(e));
	if (born < 0) return "to_reprocess";
	const birth = since[born] as KitEvent;
	if (!makesReady(birth) && !since.slice(0, born).some(isOfRound)) return "to_reprocess";
	const daysSince = (Date.parse(day) - Date.parse(birth.at.date)) / 86_400_000;
	return daysSince > LIFE_DAYS ? "to_reprocess" : "ready";
}

test("every sequence of up to four events has the state that the rules give", () => {
	const kinds: ((date: string, minutes: number) => KitEvent)[] = [
		(date, minutes) => ({ what: "used", at: at(date, minutes) }),
		(date, minutes) => ({ what: "opened", at: at(date, minutes) }),
		round,
		...(["passed", "incomplete", "in_repair", "not_clean"] as const).flatMap((found) =>
			(["after_round", "before_use", "stands_for_round"] as const).map(
				(purpose) => (date: string, minutes: number) => check(date, found, purpose, minutes),
			),
		),
		(date) => listed(date),
	];
	/** Apart, at once, and with the life over between: days and minutes of the four events. */
	const times = [
		[
			["2027-03-01", 400],
			["2027-03-02", 400],
			["2027-03-03", 400],
			["2027-03-04", 400],
		],
		[
			["2027-03-01", 400],
			["2027-03-01", 400],
			["2027-03-01", 400],
			["2027-03-01", 400],
		],
		[
			["2027-03-01", 400],
			["2027-03-01", 500],
			["2027-03-20", 400],
			["2027-03-20", 400],
		],
	] as const;
	const differing: unknown[] = [];
	let tried = 0;
	const extend = (before: readonly KitEvent[], time: (typeof times)[number]) => {
		const past = newestFirst(before);
		for (const day of ["2027-03-04", "2027-03-09", "2027-03-28"]) {
			const { name, outBy } = kitState(before, day, LIFE_DAYS);
			const said = outBy ? `${name}, out` : name;
			if (said !== byLookingBack(past, day)) differing.push({ before, day, said });
			tried += 1;
		}
		const next = time[before.length];
		if (next) for (const kind of kinds) extend([...before, kind(next[0], next[1])], time);
	};
	for (const time of times) extend([], time);
	expect(differing.slice(0, 3)).toEqual([]);
	expect(tried).toBeGreaterThan(100_000);
});
