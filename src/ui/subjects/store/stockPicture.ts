import { barY, plot, ruleX, ruleY, text } from "@observablehq/plot";
import { say } from "../../../core/say.ts";
import { quietParts } from "../../dom/quietParts.ts";
import { axisPx } from "../../format/letterPx.ts";
import { shownNumber, shownPlain } from "../../format/shownNumber.ts";
import { type StockEvent, type StockHappenings, stockEvents } from "./stockEvents.ts";
import type { StockAt } from "./stockOfItem.ts";

export interface StockShown extends StockHappenings {
	readonly reserve: number;
	readonly measure: string;
	/** What the days under the bars end, in words. */
	readonly ending: string;
	/** What stands under each bar. */
	readonly name: (date: string) => string;
}

/** Room for a letter of what stands under a bar, which is not bold, and between two of them. */
const PLAIN_LETTER_PX = 6.5;
const GAP_PX = 8;
const [LEAST_LEFT_PX, RIGHT_PX, TOP_PX, BOTTOM_PX] = [56, 24, 34, 44];
/** The tallest bar with the number over it. */
const BARS_PX = 182;
/** A line of words over the bars. */
const LINE_PX = 18;

/** Bars of usable stock against the reserve; what happens between two bars stands over the first that shows it. */
export function stockPicture(shown: StockShown, width: number): SVGElement {
	const { stock, reserve, measure } = shown;
	const tallest = Math.max(...stock.map((at) => at.usable), reserve, 1e-9);
	const left = Math.max(LEAST_LEFT_PX, axisPx(2 * tallest));
	const each = (width - left - RIGHT_PX) / stock.length;
	const longest = Math.max(...stock.map((at) => shown.name(at.date).length));
	const every = Math.max(1, Math.ceil((longest * PLAIN_LETTER_PX + GAP_PX) / each));
	const labelled = stock.filter((at, i) => i % every === 0 && at.usable > 0);
	const events = stockEvents(shown, (bar) => left + (bar + 0.5) * each, width);
	const lines = 1 + Math.max(0, ...events.map(({ line }) => line));
	const aPx = (tallest * 1.125) / BARS_PX;
	const heightOf = ({ line }: StockEvent) => (BARS_PX + (line + 0.5) * LINE_PX) * aPx;
	const picture = plot({
		width,
		height: TOP_PX + lines * LINE_PX + BARS_PX + BOTTOM_PX,
		marginLeft: left,
		marginRight: RIGHT_PX,
		marginBottom: BOTTOM_PX,
		marginTop: TOP_PX,
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
			domain: [0, (BARS_PX + lines * LINE_PX) * aPx],
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
			...events.flatMap((event) => eventMarks(event, heightOf)),
		],
	}) as SVGElement;
	return quietParts(picture);
}

/** A line down to the foot of the picture where stock runs out, and the words beside it. */
function eventMarks(event: StockEvent, heightOf: (event: StockEvent) => number) {
	const { words, kind, isLeft } = event;
	const beside = {
		x: "date",
		y: heightOf,
		textAnchor: isLeft ? "end" : "start",
		className: `${kind}-label`,
	} as const;
	if (kind === "arrival") {
		const marked = isLeft ? `${words} ▼` : `▼ ${words}`;
		return [text([event], { ...beside, text: [marked], dx: isLeft ? 5 : -5 })];
	}
	return [
		ruleX([event], { x: "date", y1: 0, y2: heightOf, className: "run-out-line" }),
		text([event], { ...beside, text: [words], dx: isLeft ? -6 : 6 }),
	];
}
