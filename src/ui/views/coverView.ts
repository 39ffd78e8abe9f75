import { kitCoverSheet } from "../../core/sheets/kitCover.ts";
import type { State } from "../book/store.ts";
import { el } from "../dom/el.ts";
import { type CoverPoint, coverPicture } from "../pictures/coverPicture.ts";
import { shownPlain } from "../shown/shownNumber.ts";
import { enoughRows, numberIn, wordIn } from "./headline.ts";
import { unitSetting } from "./unitSettings.ts";

const WIDEST_PX = 760;

/** The picture over the cover table, the sentence that says what it shows, and the rule that decided. */
export function coverView(state: State, room: number): HTMLElement | undefined {
	const rows = state.plan.tables[kitCoverSheet.file]?.rows ?? [];
	const points = rows.flatMap((row): CoverPoint[] => {
		const kits = numberIn(row, "kits");
		const unmet = numberIn(row, "unmet_per_1000_uses");
		const kind = wordIn(row, "kind");
		return kits === undefined || unmet === undefined ? [] : [{ kind, kits, unmet }];
	});
	const target = unitSetting(state, "unmet_per_1000_uses");
	if (points.length === 0 || target === undefined) return undefined;
	const owned = numberIn(state.plan.tables["day-plan.csv"]?.rows[0], "kits_in_service");
	const picture = coverPicture(points, target, owned, Math.min(WIDEST_PX, Math.max(280, room)));
	picture.setAttribute("role", "img");
	picture.setAttribute(
		"aria-label",
		"Needs that find no kit ready, by number of kits; the table below has the numbers.",
	);
	return el(
		"figure",
		{ class: "picture" },
		picture,
		el("figcaption", {}, sentence(points, target, owned), " ", rule(state)),
	);
}

function sentence(
	points: readonly CoverPoint[],
	target: number,
	owned: number | undefined,
): string {
	const kinds = new Set(points.map((point) => point.kind));
	const own = kinds.size === 1 ? points.find((point) => point.kits === owned) : undefined;
	const each = "Each further kit cuts the needs that find none ready many times over";
	const aim = `the line is the most this unit accepts: ${shownPlain(target)} in 1,000`;
	if (!own) return `${each}; ${aim}.`;
	return `${each}; ${aim}. With ${own.kits} in service about ${shownPlain(Number(own.unmet.toPrecision(2)))} needs in 1,000 find none.`;
}

function rule(state: State): string {
	const deciding = new Set(enoughRows(state).map((row) => wordIn(row, "deciding")));
	const words = [
		deciding.has("risk") && "Decided by the risk: the first number under the line.",
		deciding.has("beds") && "Decided by the beds: one kit for each delivery bed, and the spares.",
	];
	return words.filter(Boolean).join(" ");
}
