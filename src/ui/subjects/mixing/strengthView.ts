import { type StoreLots, storeLots } from "../../../core/plan/chlorine/storeLots.ts";
import { type StrengthCurve, strengthCurves } from "../../../core/plan/chlorine/strengthCurves.ts";
import type { Plan } from "../../../core/plan/plan.ts";
import { say } from "../../../core/say.ts";
import { addDays, type IsoDate } from "../../../core/values/date.ts";
import { el } from "../../dom/el.ts";
import { type Drawn, picturesFigure, pictureWidth } from "../../dom/pictureFigure.ts";
import { shownDayAndYear } from "../../format/shownDay.ts";
import { partsOf } from "../../print/partsOf.ts";
import type { State } from "../../state/store.ts";

/** As many strips as stand on one sheet of paper under its heading. */
const LOTS_TOGETHER = 5;
const LEAST_DAYS = 60;

interface Store {
	readonly lots: StoreLots;
	readonly curves: readonly StrengthCurve[];
}

const known = new WeakMap<Plan, Store>();

/** The chlorine lots of the workbook on the screen and their curves; worked out once for each plan. */
export function storeOf({ workbook, plan, today }: State): Store | undefined {
	const before = known.get(plan);
	if (before) return before;
	const lots = storeLots(workbook, today);
	if (!lots) return undefined;
	const store = { lots, curves: strengthCurves(lots) };
	known.set(plan, store);
	return store;
}

/** The usable lot whose last day comes first; undefined where none has an end in sight. */
export function endsFirst(curves: readonly StrengthCurve[]): StrengthCurve | undefined {
	return curves
		.filter(({ lastUsableDay }) => typeof lastUsableDay === "string")
		.sort((a, b) => (String(a.lastUsableDay) < String(b.lastUsableDay) ? -1 : 1))[0];
}

/** The strength of every lot over the coming months, and which ends first. */
export function strengthView(state: State, room: number): HTMLElement | undefined {
	const store = storeOf(state);
	if (!store || store.curves.length === 0) return undefined;
	const { curves, lots } = store;
	return picturesFigure(
		drawnTogether(curves, lots.firstDay, pictureWidth(room)),
		endWords(curves),
		" ",
		say`Each strip is one lot: its height is the strength left of what the label says, the upright line its last usable day, the dashed line the least that still makes the strength wanted. Tablets are counted and lose no strength here.`,
		" ",
		curves.some(({ readings }) => readings.length > 0) &&
			say`Dots are readings; the bar is what the method can be off by. A bar that does not touch the curve is worth a second reading.`,
		" ",
		el(
			"span",
			{ class: "hint" },
			say`Computed, not measured; a reading flags a lot and never overrules its discard rule.`,
		),
	);
}

/** The strips in pictures that paper does not cut, all over the same days. */
function drawnTogether(
	curves: readonly StrengthCurve[],
	firstDay: IsoDate,
	width: number,
): readonly Drawn[] {
	const days = daysShown(curves, firstDay);
	return partsOf(curves, LOTS_TOGETHER).map((shown) => {
		return {
			name:
				shown.length === curves.length
					? say`Strength left in every lot over the coming months; the table has the numbers.`
					: say`Strength left in the lots ${shown.map(({ lot }) => lot).join(", ")} over the coming months; the table has the numbers.`,
			draw: ({ strengthPicture }) => strengthPicture(shown, firstDay, days, width),
		};
	});
}

/** The first and the last day of any curve. */
function daysShown(
	curves: readonly StrengthCurve[],
	firstDay: IsoDate,
): readonly [IsoDate, IsoDate] {
	const days = [
		firstDay,
		addDays(firstDay, LEAST_DAYS),
		...curves.flatMap((curve) => [...curve.points, ...curve.readings].map(({ day }) => day)),
	].sort();
	return [days[0] as IsoDate, days.at(-1) as IsoDate];
}

function endWords(curves: readonly StrengthCurve[]): string {
	const first = endsFirst(curves);
	if (!first) return say`No lot has an end in sight.`;
	const why =
		first.endsBy === "expiry"
			? say`it expires, and is still strong enough until then`
			: say`after that it is too weak for the strength wanted`;
	return say`${first.product}, lot ${first.lot}, ends first: last usable day ${shownDayAndYear(String(first.lastUsableDay))} (${why}).`;
}
