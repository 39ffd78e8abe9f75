import { areaY, line, plot, rectY, ruleX, ruleY, text } from "@observablehq/plot";
import { say } from "../../../core/say.ts";
import { quietParts } from "../../dom/quietParts.ts";
import { type LabelPlace, labelPlaces } from "../../format/labelPlaces.ts";
import { LETTER_PX } from "../../format/letterPx.ts";
import { shownPlain, twoDigits } from "../../format/shownNumber.ts";

/** One hour of the day; its figures hold for half past. */
export interface HourPoint {
	readonly hour: number;
	/** Mean number of kits ready. */
	readonly ready: number;
	/** Needs at that hour that find none ready, per 1,000. */
	readonly none: number;
}

/** When a round starts, in hours after midnight, and what it is called. */
export interface RoundMark {
	readonly at: number;
	readonly name: string;
}

const HOURS = [0, 3, 6, 9, 12, 15, 18, 21, 24];
const FEWER_HOURS = [0, 6, 12, 18, 24];
const NARROW_PX = 480;
const LEFT_PX = 44;
const RIGHT_PX = 20;
const MARGINS = { marginLeft: LEFT_PX, marginRight: RIGHT_PX };
/** Beside less than this for each round its clock is enough. */
const NAME_ROOM_PX = 120;
/** From the line of a round to its name. */
const BESIDE_PX = 3;
/** A line of names over the picture. */
const LINE_PX = 15;

/** Kits expected ready through the day, as steps over the hours; round starts drawn and named. */
export function readyPicture(
	points: readonly HourPoint[],
	rounds: readonly RoundMark[],
	kits: number,
	width: number,
): SVGElement {
	const steps = points.flatMap(({ hour, ready }) => [
		{ at: hour, ready },
		{ at: hour + 1, ready },
	]);
	const names = namesOver(rounds, width);
	const lines = (Math.max(0, ...names.map(({ line: at }) => at)) + 1) * LINE_PX;
	return quietParts(
		plot({
			...MARGINS,
			width,
			height: 135 + lines,
			marginTop: 19 + lines,
			marginBottom: 22,
			x: { domain: [0, 24], ticks: hoursFor(width), tickFormat: clockOf, label: null, tickSize: 3 },
			y: {
				domain: [0, Math.max(1, kits)],
				ticks: Math.min(5, kits),
				tickFormat: shownPlain,
				label: say`kits ready, average`,
			},
			marks: [
				areaY(steps, { x: "at", y1: 0, y2: "ready", className: "ready-area" }),
				line(steps, { x: "at", y: "ready", className: "cover-line" }),
				ruleX(rounds, { x: "at", className: "round-line" }),
				...names.map(({ at, words, isLeft, line: onLine }) =>
					text([words], {
						x: [at],
						frameAnchor: "top",
						lineAnchor: "bottom",
						dy: -3 - onLine * LINE_PX,
						dx: isLeft ? -BESIDE_PX : BESIDE_PX,
						textAnchor: isLeft ? "end" : "start",
						className: "round-label",
					}),
				),
				ruleY([0]),
			],
		}) as SVGElement,
	);
}

/** What each round is called over its line, none over another's words; in little room by its clock alone. */
function namesOver(rounds: readonly RoundMark[], width: number) {
	const isRoomy = width / Math.max(1, rounds.length) > NAME_ROOM_PX;
	const hourPx = (width - LEFT_PX - RIGHT_PX) / 24;
	const names = rounds.toReversed().map(({ at, name }) => ({
		at,
		words: isRoomy ? `${name} ${clockOf(at)}` : clockOf(at),
	}));
	const places = labelPlaces(
		names.map(({ at, words }) => ({ at: LEFT_PX + at * hourPx, wide: words.length * LETTER_PX })),
		width - BESIDE_PX,
	);
	return names.map((name, i) => ({ ...name, ...(places[i] as LabelPlace) }));
}

/** The risk by hour as bars; the weakest hour named, the unit's limit drawn where it lies in the picture. */
export function riskPicture(
	points: readonly HourPoint[],
	rounds: readonly RoundMark[],
	limit: number,
	width: number,
): SVGElement {
	const most = Math.max(...points.map(({ none }) => none));
	const weakest = points.filter(({ none }) => none === most).slice(0, 1);
	const limits = limit < most * 3 && limit > most / 20 ? [limit] : [];
	return quietParts(
		plot({
			...MARGINS,
			width,
			height: 170,
			marginTop: 30,
			marginBottom: 24,
			x: { domain: [0, 24], ticks: hoursFor(width), tickFormat: clockOf, label: null, tickSize: 3 },
			y: {
				domain: [0, Math.max(most, ...limits) * 1.15 || 1],
				ticks: 4,
				tickFormat: twoDigits,
				label: say`of 1\u202f000 times, none ready when needed`,
			},
			marks: [
				ruleX(rounds, { x: "at", className: "round-line" }),
				rectY(points, {
					x1: "hour",
					x2: ({ hour }: HourPoint) => hour + 1,
					y: "none",
					insetLeft: 1,
					insetRight: 1,
					className: "risk-bar",
				}),
				ruleY(limits, { className: "target-line" }),
				text(limits, {
					y: (value: number) => value,
					frameAnchor: "right",
					dy: -8,
					text: () => say`limit, over all hours: ${limit}`,
					className: "target-label",
				}),
				text(weakest, {
					x: ({ hour }: HourPoint) => hour + 0.5,
					y: "none",
					dy: -8,
					text: ({ none }: HourPoint) => twoDigits(none),
					className: "weakest-label",
				}),
				ruleY([0]),
			],
		}) as SVGElement,
	);
}

function hoursFor(width: number): readonly number[] {
	return width < NARROW_PX ? FEWER_HOURS : HOURS;
}

function clockOf(hours: number): string {
	const minutes = Math.round(hours * 60);
	const two = (n: number) => String(n).padStart(2, "0");
	return `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
}
