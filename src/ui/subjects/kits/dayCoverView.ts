import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { readTable } from "../../../core/read/readTable.ts";
import { say } from "../../../core/say.ts";
import { dayCoverSheet } from "../../../core/sheets/dayCover.ts";
import { leversSheet } from "../../../core/sheets/levers.ts";
import { roundsSheet } from "../../../core/sheets/rounds.ts";
import { drawing } from "../../dom/drawing.ts";
import { el } from "../../dom/el.ts";
import { oneNeedIn, RAREST_NEEDS } from "../../format/onceIn.ts";
import { shownAs } from "../../format/shownFigure.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";
import type { HourPoint, RoundMark } from "./readyPicture.ts";

const WIDEST_PX = 900;
const NARROWEST_PX = 280;

/** Kits ready and the risk, hour by hour, for each kind of kit; the weak hour in words. */
export function dayCoverView(state: State, room: number): HTMLElement | undefined {
	const width = Math.min(WIDEST_PX, Math.max(NARROWEST_PX, room));
	const kinds = hoursByKind(state);
	if (kinds.size === 0) return undefined;
	return el("div", {}, ...[...kinds].map(([kind, points]) => figure(state, kind, points, width)));
}

/** The hours of each kind; a kind some hour of which has no answer is left out. */
export function hoursByKind(state: State): Map<string, HourPoint[]> {
	const kinds = new Map<string, HourPoint[]>();
	for (const row of rowsOf(state.plan, dayCoverSheet)) {
		const hour = numberIn(row.hour);
		const ready = numberIn(row.ready_expected);
		const none = numberIn(row.none_ready_per_1000);
		if (hour === undefined || ready === undefined || none === undefined) continue;
		const kind = wordIn(row.kind);
		kinds.set(kind, [...(kinds.get(kind) ?? []), { hour, ready, none }]);
	}
	return kinds;
}

function figure(
	state: State,
	kind: string,
	points: readonly HourPoint[],
	width: number,
): HTMLElement {
	const rounds = roundMarks(state);
	const kits = kitsOf(state, kind, points);
	const limit = unitSetting(state, "unmet_per_1000_uses") ?? Number.POSITIVE_INFINITY;
	return el(
		"figure",
		{ class: "picture through-day" },
		kind !== "" && el("h2", {}, kind),
		drawing(
			say`Kits ready on average at each hour; the table has the numbers.`,
			({ readyPicture }) => readyPicture(points, rounds, kits, width),
		),
		weakestHour(points).none >= RAREST_NEEDS &&
			drawing(
				say`Times no kit is ready when needed, at each hour; the table has the numbers.`,
				({ riskPicture }) => riskPicture(points, rounds, limit, width),
			),
		el("figcaption", {}, weakWords(points, rounds.length > 0)),
	);
}

/** The weakest hour in a sentence, and why it is weak. */
function weakWords(points: readonly HourPoint[], inRounds: boolean): string {
	const weakest = weakestHour(points);
	const best = points.reduce((a, b) => (b.none < a.none ? b : a));
	if (!inRounds || weakest.none === best.none)
		return say`No hour stands out: at any time ${oneNeedIn(weakest.none)}, and ${shownAs(dayCoverSheet.columns.ready_expected, weakest.ready)} kits are ready on average.`;
	return say`Weakest at ${halfPast(weakest)}: ${oneNeedIn(weakest.none)} then, and ${shownAs(dayCoverSheet.columns.ready_expected, weakest.ready)} kits are ready on average. Strongest at ${halfPast(best)}, when a round has just given its kits back. A line marks the start of each round; its kits come back at its end.`;
}

export function weakestHour(points: readonly HourPoint[]): HourPoint {
	return points.reduce((a, b) => (b.none > a.none ? b : a));
}

/** Figures of an hour hold for its middle. */
export function halfPast({ hour }: HourPoint): string {
	return `${String(hour).padStart(2, "0")}:30`;
}

function kitsOf(state: State, kind: string, points: readonly HourPoint[]): number {
	const now = rowsOf(state.plan, leversSheet).find((row) => wordIn(row.kind) === kind);
	return numberIn(now?.kits) ?? Math.max(...points.map(({ ready }) => ready));
}

function roundMarks(state: State): RoundMark[] {
	if (unitSetting(state, "reprocessing") !== "in_rounds") return [];
	const { rows } = readTable(roundsSheet, state.workbook.tables[roundsSheet.file]);
	return rows.map(({ value }) => ({ at: value.start / 60, name: value.label }));
}
