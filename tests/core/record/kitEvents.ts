import type { KitCheck, KitEvent } from "../../../src/core/record/kitState.ts";

export const at = (date: string, minutes = 480) => ({ date, minutes });
export const round = (date: string, minutes?: number): KitEvent => ({
	what: "reprocessed",
	at: at(date, minutes),
});
export const check = (
	date: string,
	found: "passed" | "incomplete" | "in_repair" | "not_clean" = "passed",
	purpose: "after_round" | "before_use" | "stands_for_round" = "after_round",
	minutes = 600,
): KitCheck => ({ what: "checked", found, purpose, at: at(date, minutes) });
export const used = (date: string, minutes?: number): KitEvent => ({
	what: "used",
	at: at(date, minutes),
});
export const listed = (date: string): KitEvent => ({ what: "listed_ready", at: at(date, 1440) });
