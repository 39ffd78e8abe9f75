import { dot, link, plot, ruleX, text } from "@observablehq/plot";
import { say } from "../../../core/say.ts";
import { quietParts } from "../../dom/quietParts.ts";
import { LETTER_PX } from "../../format/letterPx.ts";
import { twoDigits } from "../../format/shownNumber.ts";

/** Needs that found no kit ready in 1,000, of some days. */
export interface NeedsPoint {
	readonly name: string;
	readonly found: number;
	readonly low: number;
	readonly high: number;
}

const ROW_PX = 46;
const TOP_PX = 44;
const BOTTOM_PX = 38;
const MOST = 1000;

/** Each stretch of days as a dot in the interval that holds the truth, over the number the plan accepts. */
export function needsPicture(
	points: readonly NeedsPoint[],
	accepted: number | undefined,
	width: number,
): SVGElement {
	const known = points.flatMap(({ found, low, high }) => [found, low, high]).filter((n) => n > 0);
	const least = Math.min(1, ...(accepted ? [accepted] : []), ...known) / 3;
	const shown = (value: number) => Math.max(least, value);
	const targets = accepted ? [accepted] : [];
	const inner = width - 40;
	const words = say`the plan accepts ${twoDigits(accepted ?? 0)}`;
	const atShare = Math.log(shown(accepted ?? 0) / least) / Math.log(MOST / least);
	const isLeft = atShare * inner > inner - words.length * LETTER_PX;
	return quietParts(
		plot({
			width,
			height: points.length * ROW_PX + TOP_PX + BOTTOM_PX,
			marginLeft: 16,
			marginRight: 24,
			marginTop: TOP_PX,
			marginBottom: BOTTOM_PX,
			x: {
				type: "log",
				domain: [least, MOST],
				ticks: powersOfTen(least),
				tickFormat: twoDigits,
				label: say`of 1\u202f000 times, no kit ready when needed`,
			},
			y: { type: "band", domain: points.map(({ name }) => name), axis: null },
			marks: [
				link(points, {
					y: "name",
					x1: ({ low }: NeedsPoint) => shown(low),
					x2: ({ high }: NeedsPoint) => shown(high),
					className: "between-band",
				}),
				ruleX(targets, { className: "target-line" }),
				text(targets, {
					x: (value: number) => value,
					frameAnchor: "top",
					dy: -26,
					dx: isLeft ? -4 : 4,
					textAnchor: isLeft ? "end" : "start",
					text: () => words,
					className: "target-label",
				}),
				dot(points, {
					y: "name",
					x: ({ found }: NeedsPoint) => shown(found),
					r: 5,
					className: "past-dot",
				}),
				text(points, {
					y: "name",
					frameAnchor: "left",
					dy: -17,
					textAnchor: "start",
					text: ({ name, found }: NeedsPoint) => say`${name}: ${twoDigits(found)}`,
					className: "row-label",
				}),
			],
		}) as SVGElement,
	);
}

/** Those up to a thousand, the only ones with a name. */
function powersOfTen(least: number): number[] {
	const found: number[] = [];
	for (let power = MOST; power >= least; power /= 10) found.push(power);
	return found;
}
