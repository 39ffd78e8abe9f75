import { dot, plot, rect, ruleY, text } from "@observablehq/plot";
import { say } from "../../../core/say.ts";
import { dayNumber, isoDate, weekday } from "../../../core/values/date.ts";
import { quietParts } from "../../dom/quietParts.ts";
import { axisPx, LETTER_PX } from "../../format/letterPx.ts";
import { shownDate, shownMonth } from "../../format/shownDay.ts";
import { shownPlain, twoDigits } from "../../format/shownNumber.ts";
import type { SpanPoint } from "./spanPoint.ts";

const HALF_DAY = 0.5;
const LEAST_LEFT_PX = 34;
/** Room that the name of a day takes. */
const NAME_PX = 84;
const LABEL_GAP_PX = 5;
/** Room that a line of text takes, as a share of the picture's height. */
const LINE_SHARE = 0.1;
const HEIGHT_PX = 210;

const at = (date: string) => dayNumber(date) ?? 0;
const middle = ({ from, to }: SpanPoint) => (at(from) + at(to)) / 2;
const across = {
	x1: ({ from }: SpanPoint) => at(from) - HALF_DAY,
	x2: ({ to }: SpanPoint) => at(to) + HALF_DAY,
};

export interface SpanWords {
	/** What is counted, along the side. */
	readonly measure: string;
	/** What the band is. */
	readonly band: string;
	readonly byMonth: boolean;
}

/** Each day (or month) as a dot over its band and the bar of what was expected; where nothing is recorded the ground line is broken. */
export function spanPicture(
	points: readonly SpanPoint[],
	{ measure, band, byMonth }: SpanWords,
	width: number,
): SVGElement {
	const [first, last] = [at(points[0]?.from ?? ""), at(points.at(-1)?.to ?? "")];
	const most = Math.max(
		...points.flatMap(({ done, expected, high }) => [done, expected, high].map(known)),
	);
	const top = most * 1.12 || 1;
	const planned = points.filter(({ high }) => high !== undefined);
	const expected = points.filter((point) => point.expected !== undefined);
	const recorded = points.filter(({ done }) => done !== undefined);
	const over = recorded.filter(({ done, high }) => known(done) > (high ?? Infinity));
	const labels = bandLabels(points, band, top);
	const thick = top / 90;
	return quietParts(
		plot({
			width,
			height: HEIGHT_PX,
			marginLeft: Math.max(LEAST_LEFT_PX, axisPx(top)),
			marginRight:
				LETTER_PX * Math.max(2, ...labels.map(({ words }) => words.length)) + LABEL_GAP_PX,
			marginBottom: 30,
			marginTop: 26,
			x: {
				type: "linear",
				domain: [first - HALF_DAY, last + HALF_DAY],
				...(byMonth ? monthTicks(points, width) : dayTicks(first, last, width)),
				label: null,
			},
			y: {
				domain: [0, top],
				label: measure,
				ticks: Math.min(5, Math.ceil(most)) || 1,
				tickFormat: shownPlain,
			},
			marks: [
				rect(planned, {
					...across,
					y1: ({ low }: SpanPoint) => low ?? 0,
					y2: ({ high }: SpanPoint) => high ?? 0,
					className: "band-90",
				}),
				rect(expected, {
					...across,
					y1: (point: SpanPoint) => known(point.expected) - thick,
					y2: (point: SpanPoint) => known(point.expected) + thick,
					className: "expected-bar",
				}),
				ruleY(recorded, { ...across, y: 0 }),
				ruleY(
					points.filter(({ done }) => done === undefined),
					{ ...across, y: 0, className: "gap-line" },
				),
				...gapLabel(points, width / Math.max(1, last - first + 1)),
				dot(recorded, { x: middle, y: "done", r: byMonth ? 4 : 3, className: "past-dot" }),
				dot(over, { x: middle, y: "done", r: 7, className: "over-dot" }),
				text(over, {
					x: middle,
					y: "done",
					text: ({ done }: SpanPoint) => twoDigits(known(done)),
					dx: 10,
					dy: -7,
					textAnchor: "start",
					className: "kind-label",
				}),
				text(labels, {
					x: () => last + HALF_DAY,
					y: "y",
					text: "words",
					dx: LABEL_GAP_PX,
					textAnchor: "start",
					className: "band-label",
				}),
			],
		}) as SVGElement,
	);
}

function known(value: number | undefined): number {
	return value ?? 0;
}

/** What the band and the bar are, beside the last of them, each clear of the other. */
function bandLabels(points: readonly SpanPoint[], band: string, top: number) {
	const last = points.findLast(({ high }) => high !== undefined);
	if (!last) return [];
	const y = known(last.high) - (top * LINE_SHARE) / 2;
	const expected = {
		y: Math.min(known(last.expected), y - top * LINE_SHARE),
		words: say`average`,
	};
	return [{ y, words: band }, ...(last.expected === undefined ? [] : [expected])];
}

/** The longest stretch without a record, named where there is room. */
function gapLabel(points: readonly SpanPoint[], dayPx: number) {
	const words = say`not recorded`;
	let longest: SpanPoint[] = [];
	let run: SpanPoint[] = [];
	for (const point of points) {
		run = point.done === undefined ? [...run, point] : [];
		if (run.length > longest.length) longest = run;
	}
	const [from, to] = [longest[0], longest.at(-1)];
	if (!from || !to) return [];
	const days = at(to.to) - at(from.from) + 1;
	if (days * dayPx < words.length * LETTER_PX) return [];
	return [
		text([words], {
			x: () => (at(from.from) + at(to.to)) / 2,
			y: () => 0,
			text: (word: string) => word,
			dy: -8,
			className: "gap-label",
		}),
	];
}

/** Mondays, as many as there is room to read; the first day of a span without one. */
function dayTicks(first: number, last: number, width: number) {
	const days = Array.from({ length: last - first + 1 }, (_, i) => first + i);
	const mondays = days.filter((day) => weekday(isoDate(day)) === 1);
	const every = Math.ceil((mondays.length * NAME_PX) / width) || 1;
	const ticks = mondays.length > 0 ? mondays.filter((_, i) => i % every === 0) : [first];
	return { ticks, tickFormat: (day: number) => shownDate(isoDate(day)) };
}

function monthTicks(points: readonly SpanPoint[], width: number) {
	const every = Math.ceil((points.length * NAME_PX) / 1.5 / width);
	const shown = points.filter((_, i) => i % every === 0);
	return {
		ticks: shown.map(middle),
		tickFormat: (_: number, i: number) => {
			const from = shown[i]?.from ?? "";
			return i === 0 || from.slice(5, 7) === "01"
				? `${shownMonth(from)} ${shownPlain(Number(from.slice(2, 4)))}`
				: shownMonth(from);
		},
	};
}
