import { type ShareBetween, shareBetween } from "../../counts/shareBetween.ts";
import { valueIn } from "../../outcome.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import type { IsoDate } from "../../values/date.ts";
import { SURENESS } from "./calibration.ts";
import { kitsUsedByDay, usesAreKept } from "./kitsUsedByDay.ts";

/** Needs that found no kit ready, of all needs of some days. */
export interface NeedsShare {
	readonly unmet: number;
	/** Kits used or opened, which the plan's uses are, and the needs that found none. */
	readonly needs: number;
	/** Of the days, those on which uses were written down as they happened. */
	readonly days: number;
	/** Where the true share lies; undefined without a need. */
	readonly between: ShareBetween | undefined;
	/** The share that the plan accepts. */
	readonly accepted: number | undefined;
	/** "more" and "fewer" than the plan accepts: beyond chance. */
	readonly verdict: "more" | "fewer" | "cannot_tell";
}

const PER_THOUSAND = 1000;

/**
 * Only days on which uses were written down count: elsewhere a need that found none ready
 * would not be known, and the kits used beside it would make its share look small.
 *
 * @returns undefined where there is no such day
 */
export function needsShare(
	{ tables, settings }: ReadWorkbook,
	days: readonly IsoDate[],
): NeedsShare | undefined {
	const isKept = usesAreKept(tables, valueIn(settings.ready_life_days) ?? 0);
	const kept = new Set(days.filter(isKept));
	if (kept.size === 0) return undefined;
	const used = kitsUsedByDay(tables);
	const unmet = tables.uses.rows.filter(
		({ value }) => value.what === "none_ready" && kept.has(value.at.date),
	).length;
	let needs = unmet;
	for (const day of kept)
		for (const { figure } of used.get(day) ?? []) needs += valueIn(figure) ?? 0;
	const between = needs === 0 ? undefined : shareBetween(unmet, needs, SURENESS);
	const perThousand = valueIn(settings.unmet_per_1000_uses);
	const accepted = perThousand === undefined ? undefined : perThousand / PER_THOUSAND;
	return {
		unmet,
		needs,
		days: kept.size,
		between,
		accepted,
		verdict: verdictOf(between, accepted),
	};
}

function verdictOf(
	between: ShareBetween | undefined,
	accepted: number | undefined,
): NeedsShare["verdict"] {
	if (!between || accepted === undefined) return "cannot_tell";
	if (between.low > accepted) return "more";
	return between.high < accepted ? "fewer" : "cannot_tell";
}
