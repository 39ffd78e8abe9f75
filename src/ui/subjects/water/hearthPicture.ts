import { axisX, plot, rect, ruleY, text } from "@observablehq/plot";
import { say } from "../../../core/say.ts";
import { MINUTES_PER_HOUR, writeClock } from "../../../core/values/clock.ts";
import { quietParts } from "../../dom/quietParts.ts";
import { LETTER_PX } from "../../format/letterPx.ts";

/** A stove that burns, or a pot that is taken, in minutes after the first day's midnight. */
export interface HearthBar {
	readonly row: string;
	readonly from: number;
	readonly to: number;
	readonly sort: "fire" | "pot";
	/** The round it is for. */
	readonly round: string;
}

const ROW_PX = 40;
const BAR_PX = 18;
/** At either side: half a time of day. */
const LEFT_PX = 20;
const TICK_HOURS = 6;

/** Stoves and pots through a day and the evening before it, a row each: what burns is solid, what is full outlined. */
export function hearthPicture(bars: readonly HearthBar[], width: number): SVGElement {
	const rows = [...new Set(bars.map(({ row }) => row))];
	const first = Math.min(...bars.map(({ from }) => from));
	const last = Math.max(...bars.map(({ to }) => to));
	const pxPerMinute = (width - 2 * LEFT_PX) / (last - first);
	const step = TICK_HOURS * MINUTES_PER_HOUR;
	const ticks = Array.from(
		{ length: Math.floor(last / step) - Math.ceil(first / step) + 1 },
		(_, i) => (Math.ceil(first / step) + i) * step,
	);
	const top = ({ row }: HearthBar) => rows.indexOf(row) * ROW_PX + (ROW_PX - BAR_PX);
	const barsOf = (sort: HearthBar["sort"], className: string) =>
		rect(
			bars.filter((bar) => bar.sort === sort),
			{
				x1: "from",
				x2: "to",
				y1: top,
				y2: (bar: HearthBar) => top(bar) + BAR_PX,
				insetLeft: 0.5,
				insetRight: 0.5,
				className,
			},
		);
	return quietParts(
		plot({
			width,
			height: rows.length * ROW_PX + 46,
			marginTop: 2,
			marginBottom: 40,
			marginLeft: LEFT_PX,
			marginRight: LEFT_PX,
			x: { domain: [first, last] },
			y: { domain: [0, rows.length * ROW_PX], range: [2, rows.length * ROW_PX + 2], axis: null },
			marks: [
				axisX({
					label: say`time of day`,
					labelAnchor: "left",
					tickSize: 3,
					ticks: ticks as never,
					tickFormat: (minute: number) => writeClock(minute),
				}),
				barsOf("pot", "bar-pot"),
				barsOf("fire", "bar-work"),
				text(rows, {
					x: () => first,
					y: (_row: string, i: number) => i * ROW_PX + 12,
					text: (row: string) => row,
					textAnchor: "start",
					className: "kind-label",
				}),
				text(
					bars.filter(
						({ sort, round, from, to }) =>
							sort === "pot" && round.length * LETTER_PX <= (to - from) * pxPerMinute,
					),
					{
						x: ({ from, to }: HearthBar) => (from + to) / 2,
						y: (bar: HearthBar) => top(bar) + BAR_PX / 2,
						text: "round",
						className: "bar-label",
					},
				),
				ruleY([rows.length * ROW_PX]),
			],
		}) as SVGElement,
	);
}
