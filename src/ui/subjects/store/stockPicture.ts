import { barY, plot, ruleX, ruleY, text } from "@observablehq/plot";
import { say } from "../../../core/say.ts";
import { dayNumber } from "../../../core/values/date.ts";
import { quietParts } from "../../dom/quietParts.ts";
import { shownDay } from "../../format/shownDay.ts";
import { shownNumber, shownPlain } from "../../format/shownNumber.ts";

/** Usable stock at the end of a week or month. */
export interface StockAt {
	readonly date: string;
	readonly usable: number;
}

/** Something that happens on a day: a lot that arrives, the day stock runs out. */
export interface StockEvent {
	readonly date: string;
	readonly words: string;
}

export interface StockShown {
	readonly stock: readonly StockAt[];
	readonly reserve: number;
	readonly arrivals: readonly StockEvent[];
	readonly runsOut: StockEvent | undefined;
	readonly measure: string;
	/** What the days under the bars end, in words. */
	readonly ending: string;
	/** What stands under each bar. */
	readonly name: (date: string) => string;
}

/** Room for a letter of what stands under a bar, and between two of them. */
const LETTER_PX = 6.5;
const GAP_PX = 8;

/** Bars of usable stock against the reserve; what happens between two bars stands over the first that shows it. */
export function stockPicture(shown: StockShown, width: number): SVGElement {
	const { stock, reserve, measure } = shown;
	const tallest = Math.max(...stock.map((at) => at.usable), reserve, 1e-9);
	const each = (width - 80) / stock.length;
	const longest = Math.max(...stock.map((at) => shown.name(at.date).length));
	const every = Math.max(1, Math.ceil((longest * LETTER_PX + GAP_PX) / each));
	const events = shown.arrivals.flatMap((event) => placed(stock, event));
	const runsOut = shown.runsOut ? placed(stock, shown.runsOut) : [];
	const labelled = stock.filter((at, i) => i % every === 0 && at.usable > 0);
	const picture = plot({
		width,
		height: 280,
		marginLeft: 56,
		marginRight: 24,
		marginBottom: 44,
		marginTop: 34,
		x: {
			type: "band",
			domain: stock.map((at) => at.date),
			label: shown.ending,
			tickSize: 0,
			padding: 0.25,
			ticks: stock.filter((_, i) => i % every === 0).map((at) => at.date),
			tickFormat: shown.name,
		},
		y: {
			domain: [0, tallest * 1.25],
			label: say`usable, ${measure}`,
			ticks: 5,
			tickFormat: shownPlain,
		},
		marks: [
			barY(stock, { x: "date", y: "usable", className: "stock-bar" }),
			ruleY([0]),
			ruleY([reserve], { className: "target-line" }),
			text([stock.at(-1)], {
				x: (at: StockAt) => at.date,
				y: () => reserve,
				text: () => say`reserve ${shownNumber(reserve, 0)}`,
				dy: -7,
				dx: each / 2,
				textAnchor: "end",
				className: "target-label",
			}),
			text(labelled, {
				x: "date",
				y: "usable",
				text: (at: StockAt) => shownNumber(at.usable, 0),
				dy: -8,
				className: "cover-label",
			}),
			ruleX(runsOut, { x: "date", className: "run-out-line" }),
			text(events, {
				x: "date",
				y: () => tallest * 1.2,
				text: (event: Placed) => `▼ ${event.words}`,
				textAnchor: "start",
				dx: -5,
				className: "arrival-label",
			}),
			text(runsOut, {
				x: "date",
				y: () => tallest * 1.08,
				text: "words",
				textAnchor: (runsOut[0]?.at ?? 0) > stock.length / 2 ? "end" : "start",
				dx: (runsOut[0]?.at ?? 0) > stock.length / 2 ? -6 : 6,
				className: "run-out-label",
			}),
		],
	}) as SVGElement;
	return quietParts(picture);
}

interface Placed extends StockEvent {
	readonly at: number;
}

/** The bar that first shows what happened on a day; none where that lies beyond the last. */
function placed(stock: readonly StockAt[], event: StockEvent): Placed[] {
	const at = stock.findIndex(({ date }) => (dayNumber(date) ?? 0) >= (dayNumber(event.date) ?? 0));
	const bar = stock[at];
	return bar ? [{ words: `${event.words} ${shownDay(event.date)}`, date: bar.date, at }] : [];
}
