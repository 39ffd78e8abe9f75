import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { dayPlanSheet } from "../../../core/sheets/dayPlan.ts";
import { kitCoverSheet } from "../../../core/sheets/kitCover.ts";
import { el } from "../../dom/el.ts";
import { pictureFigure, pictureWidth } from "../../dom/pictureFigure.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";
import type { CoverPoint } from "./coverPoint.ts";
import { coverWords } from "./coverWords.ts";
import { enoughRows } from "./enoughRows.ts";
import { leversBrief } from "./leversBrief.ts";

/** As wide as the style leaves it beside what would help, so that its letters stay their size. */
const WIDEST_PX = 576;

/** The picture over the cover table, what it means in words, and beside it what would help. */
export function coverView(state: State, room: number): HTMLElement | undefined {
	const picture = coverFigure(state, room);
	return picture && el("div", { class: "cover-and-levers" }, picture, leversBrief(state));
}

function coverFigure(state: State, room: number): HTMLElement | undefined {
	const rows = rowsOf(state.plan, kitCoverSheet);
	const points = rows.flatMap((row): CoverPoint[] => {
		const kits = numberIn(row.kits);
		const unmet = numberIn(row.unmet_per_1000_uses);
		const kind = wordIn(row.kind);
		return kits === undefined || unmet === undefined ? [] : [{ kind, kits, unmet }];
	});
	const target = unitSetting(state, "unmet_per_1000_uses");
	if (points.length === 0 || target === undefined) return undefined;
	const owned = numberIn(rowsOf(state.plan, dayPlanSheet)[0]?.kits_in_service);
	return pictureFigure(
		({ coverPicture }) =>
			coverPicture(points, target, owned, pictureWidth(Math.min(room, WIDEST_PX))),
		say`Times no kit is ready when needed, by number of kits; the table has the numbers.`,
		...coverWords(state).map((words) => el("p", { class: "in-words" }, words)),
		el("p", {}, sentence(target), " ", rule(state)),
	);
}

function sentence(target: number): string {
	return say`Each further kit cuts the times no kit is ready when needed many times over; the line is the most this unit accepts: ${shownPlain(target)} in 1\u202f000.`;
}

function rule(state: State): string {
	const deciding = new Set(enoughRows(state).map((row) => wordIn(row.deciding)));
	const words = [
		deciding.has("risk") && say`Decided by the risk: the first number under the line.`,
		deciding.has("beds") &&
			say`Decided by the beds: one kit for each delivery bed, and the spares.`,
	];
	return words.filter(Boolean).join(" ");
}
