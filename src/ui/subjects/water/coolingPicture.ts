import { dot, line, plot, ruleX, ruleY, text } from "@observablehq/plot";
import { say } from "../../../core/say.ts";
import { MINUTES_PER_HOUR } from "../../../core/values/clock.ts";
import { type CoolingPot, coolingCurve } from "../../../core/water/coolingCurve.ts";
import { quietParts } from "../../dom/quietParts.ts";
import { shownMinutes } from "../../format/shownMinutes.ts";
import { shownNumber, shownPlain } from "../../format/shownNumber.ts";

/** Followed this far where the water never cools to what is wanted. */
const HOURS_WITHOUT_END = 12;
const LABEL_ROOM = 1.25;
/** Labels closer than this, in °C, would stand on each other. */
const NEAR_C = 8;

/** Water from the boil down to the wanted temperature, with the room beneath and the time it takes. */
export function coolingPicture(
	pot: CoolingPot,
	wantedC: number,
	/** Undefined where it never cools so far. */
	minutes: number | undefined,
	width: number,
): SVGElement {
	const hours =
		minutes === undefined
			? HOURS_WITHOUT_END
			: Math.max(1, (minutes / MINUTES_PER_HOUR) * LABEL_ROOM);
	const cool =
		minutes === undefined
			? []
			: [{ hours: minutes / MINUTES_PER_HOUR, celsius: Math.min(wantedC, pot.fromC) }];
	const roomAbove = pot.roomC > wantedC;
	const near = Math.abs(pot.roomC - wantedC) < NEAR_C;
	// The labels stand at the left, where the curve is high above them.
	const label = (celsius: number, words: string, above: boolean, className: string) =>
		text([{ hours: 0, celsius }], {
			x: "hours",
			y: "celsius",
			text: () => words,
			textAnchor: "start",
			dx: 4,
			dy: above ? -8 : 10,
			className,
		});
	return quietParts(
		plot({
			width,
			height: 270,
			marginLeft: 48,
			marginRight: 16,
			marginTop: 28,
			marginBottom: 40,
			x: {
				domain: [0, hours],
				label: say`hours after the boil`,
				ticks: Math.min(12, width / 60),
				tickFormat: shownPlain,
			},
			y: {
				domain: [Math.min(0, pot.roomC), Math.max(105, pot.fromC)],
				label: say`water, °C`,
				ticks: 6,
				tickFormat: shownPlain,
			},
			marks: [
				ruleY([wantedC], { className: "target-line" }),
				ruleY([pot.roomC], { className: "room-line" }),
				label(wantedC, say`wanted: ${wantedC} °C or less`, near && !roomAbove, "target-label"),
				label(pot.roomC, say`room ${pot.roomC} °C`, roomAbove && near, "kind-label"),
				line(coolingCurve(pot, hours), { x: "hours", y: "celsius", className: "cover-line" }),
				text([{ hours: 0, celsius: pot.fromC }], {
					x: "hours",
					y: "celsius",
					text: () => say`boils at ${shownNumber(pot.fromC, 1)} °C`,
					textAnchor: "start",
					dx: 12,
					dy: -4,
					className: "cover-label",
				}),
				ruleX(cool, { x: "hours", y1: "celsius", y2: 66, className: "cool-line" }),
				dot(cool, { x: "hours", y: "celsius", r: 4.5, className: "own-dot" }),
				text(cool, {
					x: "hours",
					y: 66,
					text: () => say`cool after ${shownMinutes(minutes ?? 0)}`,
					textAnchor: "end",
					dx: 4,
					dy: -8,
					className: "own-label",
				}),
			],
		}) as SVGElement,
	);
}
