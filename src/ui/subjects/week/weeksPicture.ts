import { plot, rect, ruleY, text } from "@observablehq/plot";
import { dayNumber, type IsoDate, isoDate } from "../../../core/values/date.ts";
import { quietParts } from "../../dom/quietParts.ts";
import { shownDate } from "../../format/shownDay.ts";
import { shownPlain } from "../../format/shownNumber.ts";

const HEIGHT_PX = 120;
const TICKS = 3;
/** Days between two bars, so that each stands by itself. */
const GAP_DAYS = 1;

/** One measure of one week. */
export interface WeekPoint {
	readonly from: IsoDate;
	readonly to: IsoDate;
	readonly setAside: number;
	readonly expected: number | undefined;
}

/** Half a day’s name, in every language. */
const SIDE_PX = 32;

const at = (date: IsoDate) => dayNumber(date) ?? 0;

/** A bar a week up to what is set aside, with a stroke where the expected lies; the highest carries its number. */
export function weeksPicture(points: readonly WeekPoint[], width: number): SVGElement {
	const highest = points.reduce((most, point) => (point.setAside > most.setAside ? point : most));
	const first = at(points[0]?.from ?? "");
	const last = at(points.at(-1)?.to ?? "") + 1;
	const step = Math.max(1, Math.ceil(points.length / TICKS));
	const across = {
		x1: ({ from }: WeekPoint) => at(from),
		x2: ({ to }: WeekPoint) => at(to) + 1 - GAP_DAYS,
	};
	const thick = highest.setAside / 40 || 0.02;
	const picture = plot({
		width,
		height: HEIGHT_PX,
		marginLeft: SIDE_PX,
		marginRight: SIDE_PX,
		marginTop: 22,
		marginBottom: 24,
		x: {
			type: "linear",
			domain: [first, last],
			ticks: points.filter((_, index) => index % step === 0).map(({ from }) => at(from)),
			tickFormat: (day: number) => shownDate(isoDate(day)),
			label: null,
		},
		y: { domain: [0, highest.setAside || 1], axis: null },
		marks: [
			rect(points, { ...across, y1: 0, y2: "setAside", className: "week-bar" }),
			rect(
				points.filter(({ expected }) => expected !== undefined),
				{
					...across,
					y1: ({ expected = 0 }: WeekPoint) => Math.max(0, expected - thick),
					y2: ({ expected = 0 }: WeekPoint) => expected + thick,
					className: "expected-bar",
				},
			),
			text([highest], {
				x: ({ from, to }: WeekPoint) => (at(from) + at(to) + 1) / 2,
				y: "setAside",
				text: (point: WeekPoint) => shownPlain(point.setAside),
				dy: -8,
				className: "week-most",
			}),
			ruleY([0]),
		],
	}) as SVGElement;
	return quietParts(picture);
}
