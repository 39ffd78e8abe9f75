import { axisX, plot, rect, ruleX, text } from "@observablehq/plot";
import { say } from "../../../core/say.ts";
import { quietParts } from "../../dom/quietParts.ts";
import { LETTER_PX } from "../../format/letterPx.ts";
import { shownPlain } from "../../format/shownNumber.ts";

/** One step as a bar: where it lies, what it is, its number in the list of steps. */
export interface TimelineBar {
	readonly round: string;
	/** Minutes from the start of its round. */
	readonly from: number;
	readonly to: number;
	readonly sort: "work" | "wait" | "soak" | "hold" | "descale" | "rinse";
	readonly number: number;
	/** Stands over the bar, only where the clock or safety hangs on it: the longest of these for which there is room. */
	readonly labels: readonly string[];
	/** Stands under the bar. */
	readonly beneath: string;
}

const PLAIN_ROW_PX = 74;
const BENEATH_PX = 20;
const BAR_PX = 30;
const NUMBER_PX = 15;
const LEFT_PX = 14;

/** The rounds of a day, a row each: work solid, waiting hatched, soak and descaling named, steps numbered. */
export function timelinePicture(bars: readonly TimelineBar[], width: number): SVGElement {
	const rounds = [...new Set(bars.map((bar) => bar.round))];
	const most = Math.max(1, ...bars.map((bar) => bar.to));
	const pxPerMinute = (width - 2 * LEFT_PX) / most;
	const beneath = bars.some((bar) => bar.beneath !== "") ? BENEATH_PX : 0;
	const rowPx = PLAIN_ROW_PX + beneath;
	const rowOf = (bar: TimelineBar) => rounds.indexOf(bar.round) * rowPx;
	const middle = ({ from, to }: TimelineBar) => (from + to) / 2;
	const bottom = (bar: TimelineBar) => rowOf(bar) + PLAIN_ROW_PX;
	const solid = ({ sort }: TimelineBar) => sort === "work" || sort === "rinse";
	const marksOf = (wanted: (bar: TimelineBar) => boolean, className: string, fill?: string) =>
		rect(bars.filter(wanted), {
			x1: "from",
			x2: "to",
			y1: (bar: TimelineBar) => bottom(bar) - BAR_PX,
			y2: bottom,
			insetLeft: 0.5,
			insetRight: 0.5,
			className,
			...(fill === undefined ? {} : { fill }),
		});
	const picture = plot({
		width,
		height: rounds.length * rowPx + 42,
		marginTop: 2,
		marginBottom: 40,
		marginLeft: LEFT_PX,
		marginRight: LEFT_PX,
		x: { domain: [0, most] },
		y: { domain: [0, rounds.length * rowPx], range: [2, rounds.length * rowPx + 2], axis: null },
		marks: [
			axisX({
				label: say`minutes from the start of the round`,
				labelAnchor: "left",
				tickSize: 3,
				ticks: 8,
				tickFormat: shownPlain,
			}),
			marksOf(solid, "bar-work"),
			marksOf(({ sort }) => sort === "wait" || sort === "hold", "bar-wait", "url(#hatch-wait)"),
			marksOf(({ sort }) => sort === "soak", "bar-soak", "url(#hatch-wait)"),
			marksOf(({ sort }) => sort === "descale", "bar-descale", "url(#dots-vinegar)"),
			numbers(
				bars.filter((bar) => fits(bar) && solid(bar)),
				"bar-number",
			),
			numbers(
				bars.filter((bar) => fits(bar) && !solid(bar)),
				"bar-number-open",
			),
			text(
				bars.filter((bar, at) => bar.round !== bars[at - 1]?.round),
				{
					x: 0,
					y: (bar: TimelineBar) => rowOf(bar) + 14,
					text: "round",
					textAnchor: "start",
					className: "kind-label",
				},
			),
			text(
				bars.filter((bar) => labelOf(bar) !== ""),
				{
					x: "from",
					y: (bar: TimelineBar) => bottom(bar) - BAR_PX - 9,
					text: labelOf,
					textAnchor: "start",
					className: "bar-label",
				},
			),
			text(
				bars.filter((bar) => bar.beneath !== ""),
				{
					x: "from",
					y: (bar: TimelineBar) => bottom(bar) + 9,
					text: "beneath",
					textAnchor: "start",
					className: "bar-label",
				},
			),
			ruleX([0]),
		],
	}) as SVGElement;
	picture.prepend(patterns());
	return quietParts(picture);

	/** The longest label that ends before the next one of its round begins. */
	function labelOf(bar: TimelineBar): string {
		const next = bars.find(
			(b) => b.round === bar.round && b.from > bar.from && b.labels.length > 0,
		);
		const room = ((next?.from ?? most) - bar.from) * pxPerMinute;
		return bar.labels.find((words) => words.length * LETTER_PX <= room) ?? "";
	}
	function fits({ from, to }: TimelineBar): boolean {
		return (to - from) * pxPerMinute >= NUMBER_PX;
	}
	function numbers(which: readonly TimelineBar[], className: string) {
		return text(which, {
			x: middle,
			y: (bar: TimelineBar) => bottom(bar) - BAR_PX / 2,
			text: ({ number }: TimelineBar) => String(number),
			className,
		});
	}
}

const SVG = "http://www.w3.org/2000/svg";

/** Fills that stay apart on a black-and-white printer. */
function patterns(): SVGElement {
	const defs = document.createElementNS(SVG, "defs");
	const add = (id: string, size: number, shape: string, shapeProps: Record<string, string>) => {
		const pattern = document.createElementNS(SVG, "pattern");
		for (const [name, value] of Object.entries({
			id,
			width: String(size),
			height: String(size),
			patternUnits: "userSpaceOnUse",
		}))
			pattern.setAttribute(name, value);
		const drawn = document.createElementNS(SVG, shape);
		for (const [name, value] of Object.entries(shapeProps)) drawn.setAttribute(name, value);
		pattern.append(drawn);
		defs.append(pattern);
	};
	add("hatch-wait", 7, "path", { d: "M-1,1 l2,-2 M0,7 l7,-7 M6,8 l2,-2", stroke: "currentColor" });
	add("dots-vinegar", 7, "circle", { cx: "3.5", cy: "3.5", r: "1.6", fill: "currentColor" });
	return defs as unknown as SVGElement;
}
