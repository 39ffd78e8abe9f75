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
	const lastKits = Math.max(...points.map((point) => point.kits));
	const top = Math.max(1000, target);
	const bottom = Math.min(target / 10, ...shown.map((point) => point.unmet / 2));
	const picture = plot({
		width,
		height: 280,
		marginLeft: 64,
		marginRight: 24,
		marginBottom: 40,
		marginTop: 28,
		x: {
			domain: [...new Set(points.map((point) => point.kits))].sort((a, b) => a - b),
			type: "point",
			label: say`kits in service`,
			tickSize: 0,
		},
		y: {
			type: "log",
			domain: [bottom, top],
			label: say`of 1,000 times, no kit ready when needed`,
			ticks: 5,
			tickFormat: twoDigits,
		},
		marks: [
			ruleY([target], { className: "target-line" }),
			text([{ kits: lastKits, unmet: target }], {
				x: "kits",
				y: "unmet",
				text: () => say`at most ${target}`,
				dy: -8,
				textAnchor: "end",
				className: "target-label",
			}),
			line(shown, { x: "kits", y: "unmet", z: "kind", className: "cover-line" }),
			dot(shown, { x: "kits", y: "unmet", r: 4, className: "cover-dot" }),
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
			text(shown, {
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
