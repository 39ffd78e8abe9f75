import { dot, line, plot, ruleX, ruleY, text } from "@observablehq/plot";
import { say } from "../../../core/say.ts";
import { quietParts } from "../../dom/quietParts.ts";
import { twoDigits } from "../../format/shownNumber.ts";
import { withRoom } from "../../format/withRoom.ts";
import type { CoverPoint } from "./coverPoint.ts";
import { kindNames } from "./kindNames.ts";

/** Below this the picture would only show empty air. */
const LEAST_SHOWN = 1e-4;

/** So many numbers of kits are shown beyond the last at which the curve can be seen. */
const BEYOND = 3;
/** Of very many numbers of kits as many are named, and have a dot, as have this room, in pixels. */
const ROOM_OF_NUMBER = 26;
/** Around the curves, in pixels. */
const [LEFT, RIGHT, TOP, BOTTOM] = [64, 32, 28, 40];
const CURVE_PX = 144;
/** A line of names under the curves. */
const LINE_PX = 16;

/** The kits picture: needs that find none ready against number of kits, the target drawn, the unit's own number marked. */
export function coverPicture(
	points: readonly CoverPoint[],
	target: number,
	owned: number | undefined,
	width: number,
): SVGElement {
	const shown = points.filter((point) => point.unmet >= LEAST_SHOWN);
	const firsts = shown.filter((point, at) => point.kind !== shown[at - 1]?.kind);
	const own = firsts.length === 1 ? shown.filter((point) => point.kits === owned) : [];
	const numbers = numbersShown(points, shown);
	const every = Math.ceil((numbers.length * ROOM_OF_NUMBER) / (width - LEFT - RIGHT));
	const dotted = shown.filter((point) => numbers.indexOf(point.kits) % every === 0);
	// What is written beside the last dot may have no room.
	const named = dotted.filter((point) => numbers.indexOf(point.kits) + every <= numbers.length);
	// Where all begin above the limit there is room under it at the left.
	const underCurve = firsts.every((point) => point.unmet > target);
	const most = Math.max(target, ...shown.map((point) => point.unmet));
	const top = Math.max(target, numbers[0] === 1 ? 1000 : Math.min(1000, 10 * most));
	const bottom = Math.min(target / 10, ...shown.map((point) => point.unmet / 2));
	const pxOf = ({ kits, unmet }: CoverPoint) => ({
		x: LEFT + ((numbers.indexOf(kits) + 0.5) / numbers.length) * (width - LEFT - RIGHT),
		y: (Math.log(top / unmet) / Math.log(top / bottom)) * CURVE_PX,
	});
	const kinds = kindNames(shown, pxOf, width);
	const namesPx = kinds.length === 0 ? 0 : (1 + Math.max(...kinds.map((at) => at.line))) * LINE_PX;
	const picture = plot({
		width,
		height: TOP + CURVE_PX + namesPx + BOTTOM,
		marginLeft: LEFT,
		marginRight: RIGHT,
		marginBottom: BOTTOM,
		insetBottom: namesPx,
		marginTop: TOP,
		x: {
			domain: numbers,
			ticks: numbers.filter((_, at) => at % every === 0),
			type: "point",
			label: say`kits in service`,
			tickSize: 0,
		},
		y: {
			type: "log",
			domain: [bottom, top],
			label: say`of 1\u202f000 times, no kit ready when needed`,
			ticks: 5,
			tickFormat: twoDigits,
		},
		marks: [
			ruleY([target], { className: "target-line" }),
			text([say`at most ${target}`], {
				frameAnchor: underCurve ? "left" : "right",
				y: [target],
				dx: underCurve ? 6 : 0,
				dy: underCurve ? 10 : -8,
				className: "target-label",
			}),
			line(shown, { x: "kits", y: "unmet", z: "kind", className: "cover-line" }),
			dot(dotted, { x: "kits", y: "unmet", r: 4, className: "cover-dot" }),
			dot(own, { x: "kits", y: "unmet", r: 9, className: "own-dot" }),
			text(own, {
				x: "kits",
				y: "unmet",
				text: () => say`this unit`,
				dx: -12,
				dy: 14,
				textAnchor: "end",
				className: "own-label",
			}),
			ruleX(kinds, { x: "kits", y1: "unmet", y2: bottom, className: "now-line" }),
			...kinds.map(({ kits, kind, isLeft, line: onLine }) =>
				text([kind], {
					x: [kits],
					frameAnchor: "bottom",
					dy: (onLine + 1) * LINE_PX - namesPx,
					textAnchor: isLeft ? "end" : "start",
					className: "kind-label",
				}),
			),
			text(withRoom(named, pxOf), {
				x: "kits",
				y: "unmet",
				text: (point: CoverPoint) => twoDigits(point.unmet),
				dx: 8,
				dy: -9,
				textAnchor: "start",
				className: "cover-label",
			}),
		],
	}) as SVGElement;
	return quietParts(picture);
}

function numbersShown(points: readonly CoverPoint[], shown: readonly CoverPoint[]): number[] {
	const last = Math.max(...shown.map((point) => point.kits)) + BEYOND;
	const numbers = [...new Set(points.map((point) => point.kits))].sort((a, b) => a - b);
	return shown.length === 0 ? numbers : numbers.filter((kits) => kits <= last);
}
