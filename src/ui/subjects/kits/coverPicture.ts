import { dot, line, plot, ruleY, text } from "@observablehq/plot";
import { say } from "../../../core/say.ts";
import { quietParts } from "../../dom/quietParts.ts";
import { twoDigits } from "../../format/shownNumber.ts";

/** One number of kits and how often it is not enough. */
export interface CoverPoint {
	/** Kind of kit; blank where the unit has only one. */
	readonly kind: string;
	readonly kits: number;
	/** Needs that find no kit ready, per 1,000. */
	readonly unmet: number;
}

/** Below this the picture would only show empty air. */
const LEAST_SHOWN = 1e-4;

/** So many numbers of kits are shown beyond the last at which the curve can be seen. */
const BEYOND = 3;
/** Of very many numbers of kits as many are named, and have a dot, as have this room, in pixels. */
const ROOM_OF_NUMBER = 26;
/** Left of the curve and right of it, in pixels. */
const [LEFT, RIGHT] = [64, 32];

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
	const most = Math.max(target, ...shown.map((point) => point.unmet));
	const top = Math.max(target, numbers[0] === 1 ? 1000 : Math.min(1000, 10 * most));
	const bottom = Math.min(target / 10, ...shown.map((point) => point.unmet / 2));
	const picture = plot({
		width,
		height: 280,
		marginLeft: LEFT,
		marginRight: RIGHT,
		marginBottom: 40,
		marginTop: 28,
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
			text([{ kits: numbers.at(-1), unmet: target }], {
				x: "kits",
				y: "unmet",
				text: () => say`at most ${target}`,
				dy: -8,
				textAnchor: "end",
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
			text(firsts, {
				x: "kits",
				y: "unmet",
				text: "kind",
				dx: 10,
				dy: -22,
				textAnchor: "start",
				className: "kind-label",
			}),
			text(named, {
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
