import { areaY, dot, line, plot, ruleX, ruleY, text } from "@observablehq/plot";
import type { StrengthCurve } from "../../../core/plan/chlorine/strengthCurves.ts";
import { say } from "../../../core/say.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { quietParts } from "../../dom/quietParts.ts";
import { LETTER_PX } from "../../format/letterPx.ts";
import { shortened } from "../../format/shortened.ts";
import { shownDate, shownDay, shownDayAndYear, shownMonth } from "../../format/shownDay.ts";
import { shownNumber } from "../../format/shownNumber.ts";

const LOT_PX = 96;
/** Room above the label's strength for the lot's name and its end. */
const TOP_SHARE = 2.25;
const NAME_SHARE = 1.95;
const END_SHARE = 1.42;
const TICK_SHARE = 1.16;
const MOST_READ_SHARE = 1.3;
const LEFT_PX = 18;
const RIGHT_PX = 14;

/** One strip a lot: strength left as a share of the label's, from the first day to its last usable day. */
export function strengthPicture(
	curves: readonly StrengthCurve[],
	firstDay: IsoDate,
	[from, to]: readonly [IsoDate, IsoDate],
	width: number,
): SVGElement {
	const points = curves.flatMap((curve) =>
		curve.points.map(({ day, strength }) => ({
			name: nameOf(curve),
			day: new Date(day),
			share: strength / curve.labelled,
		})),
	);
	const ends = curves.map((curve) => {
		const day = curve.points.at(-1)?.day ?? firstDay;
		return { name: nameOf(curve), day: new Date(day), words: endWords(curve, day) };
	});
	// Beyond the horizon a lot goes on; one that is not usable has no last day.
	const lastDays = ends.filter((_, at) => {
		const last = curves[at]?.lastUsableDay;
		return last != null && last === curves[at]?.points.at(-1)?.day;
	});
	const wanted = curves.flatMap((curve) =>
		curve.wanted === undefined
			? []
			: [{ name: nameOf(curve), share: curve.wanted / curve.labelled, pct: curve.wanted }],
	);
	const readings = curves.flatMap((curve) =>
		curve.readings.map(({ day, strength, low, high }) => ({
			name: nameOf(curve),
			day: new Date(day),
			share: Math.min(strength / curve.labelled, MOST_READ_SHARE),
			low: Math.min(low / curve.labelled, MOST_READ_SHARE),
			high: Math.min(high / curve.labelled, MOST_READ_SHARE),
		})),
	);
	// A label stands over its day, and moves aside where the edge of the picture is near.
	const share = (day: Date) =>
		(day.getTime() - Date.parse(from)) / (Date.parse(to) - Date.parse(from));
	const moved = ({ day, words }: (typeof ends)[number]) => {
		const [room, half] = [width - LEFT_PX - RIGHT_PX, (words.length * LETTER_PX) / 2];
		const at = share(day) * room;
		return Math.max(half, Math.min(at, room - half)) - at;
	};
	return quietParts(
		plot({
			width,
			height: curves.length * LOT_PX + 46,
			marginLeft: LEFT_PX,
			marginRight: RIGHT_PX,
			marginTop: 8,
			marginBottom: 38,
			x: {
				type: "utc",
				domain: [new Date(from), new Date(to)],
				label: null,
				ticks: width / 90,
				tickFormat: (day: Date, at: number) => tickWords(day, at),
			},
			y: { domain: [0, TOP_SHARE], axis: null },
			fy: { domain: curves.map(nameOf), axis: null, padding: 0 },
			marks: [
				ruleY([0], { className: "strength-ground" }),
				areaY(points, { fy: "name", x: "day", y: "share", className: "strength-area" }),
				line(points, { fy: "name", x: "day", y: "share", className: "strength-line" }),
				ruleY(wanted, { fy: "name", y: "share", className: "target-line" }),
				ruleX(lastDays, {
					fy: "name",
					x: "day",
					y1: 0,
					y2: TICK_SHARE,
					className: "strength-last",
				}),
				ruleX(readings, {
					fy: "name",
					x: "day",
					y1: "low",
					y2: "high",
					className: "reading-error",
				}),
				dot(readings, { fy: "name", x: "day", y: "share", r: 2.5, className: "reading-dot" }),
				text(wanted.slice(0, 1), {
					fy: "name",
					x: new Date(to),
					y: "share",
					dx: -4,
					dy: -9,
					textAnchor: "end",
					text: ({ pct }: (typeof wanted)[number]) => say`${pct} % wanted`,
					className: "target-label",
				}),
				text(curves, {
					fy: nameOf,
					x: new Date(from),
					y: NAME_SHARE,
					text: (curve: StrengthCurve) => titleWords(curve, firstDay, width),
					textAnchor: "start",
					className: "kind-label",
				}),
				...ends.map((end) =>
					text([end], {
						fy: "name",
						x: "day",
						y: END_SHARE,
						text: "words",
						dx: moved(end),
						className: "strength-end",
					}),
				),
			],
		}) as SVGElement,
	);
}

/** The year stands under the first day and under each new year. */
function tickWords(day: Date, at: number): string {
	const date = day.toISOString().slice(0, 10);
	const words = date.endsWith("-01") ? shownMonth(date) : shownDate(date);
	return at === 0 || date.endsWith("-01-01") ? `${words}\n${date.slice(0, 4)}` : words;
}

function nameOf({ product, lot }: StrengthCurve): string {
	return `${lot} · ${product}`;
}

function titleWords(curve: StrengthCurve, firstDay: IsoDate, width: number): string {
	const first = curve.points.find(({ day }) => day >= firstDay);
	const value = first ? strengthFrom(curve, first, firstDay) : "";
	const most = Math.floor((width - LEFT_PX) / LETTER_PX) - value.length;
	return shortened(nameOf(curve), most) + value;
}

function endWords(curve: StrengthCurve, end: IsoDate): string {
	const { lastUsableDay: last, endsBy } = curve;
	if (last === undefined) return say`not usable: out of date or too weak`;
	if (last === null) return say`no end in sight →`;
	if (last > end) return say`usable until ${shownDayAndYear(last)} →`;
	return endsBy === "expiry"
		? say`last day ${shownDay(last)}: expires`
		: say`last day ${shownDay(last)}: then too weak`;
}

function strengthFrom(
	curve: StrengthCurve,
	{ day, strength }: StrengthCurve["points"][number],
	firstDay: IsoDate,
): string {
	const shown = strengthWords(curve, strength);
	return day > firstDay ? say`: ${shown} from ${shownDay(day)}` : say`: ${shown} now`;
}

function strengthWords({ form }: StrengthCurve, strength: number): string {
	return form === "tablet"
		? say`${shownNumber(strength, 2)} g a tablet`
		: say`${shownNumber(strength, form === "powder" ? 1 : 2)} %`;
}
