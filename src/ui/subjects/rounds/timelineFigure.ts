import { inLoad } from "../../../core/rounds/timedSteps.ts";
import { say } from "../../../core/say.ts";
import { writeClock } from "../../../core/values/clock.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { drawing } from "../../dom/drawing.ts";
import { el } from "../../dom/el.ts";
import { counted } from "../../format/counted.ts";
import { LETTER_PX } from "../../format/letterPx.ts";
import { shortened } from "../../format/shortened.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import type { ShownRound, ShownStep } from "./dayRounds.ts";
import { roundSpan } from "./roundClock.ts";
import type { TimelineBar } from "./timelinePicture.ts";

/** The timeline of some rounds with the list that its numbers stand for. */
export function timelineFigure(
	rounds: readonly ShownRound[],
	day: IsoDate | undefined,
	width: number,
): HTMLElement | undefined {
	const names = stepNames(rounds);
	const bars = rounds.flatMap((round) => barsOf(round, day, names, Math.floor(width / LETTER_PX)));
	if (bars.length === 0) return undefined;
	return el(
		"figure",
		{ class: "picture timeline" },
		drawing(say`The steps as bars in time; the list below names them.`, ({ timelinePicture }) =>
			timelinePicture(bars, width),
		),
		el(
			"figcaption",
			{},
			el("p", {}, keyWords(bars)),
			el("ol", { class: "step-names" }, ...names.map((name) => el("li", {}, name))),
		),
	);
}

/** What the marks of the picture mean: only those that are in it. */
export function keyWords(bars: readonly Pick<TimelineBar, "sort">[]): string {
	return [
		say`Solid: someone is busy. Hatched: waiting.`,
		bars.some(({ sort }) => sort === "descale") && say`Dotted: vinegar.`,
		bars.some(({ sort }) => sort === "soak") && say`Over a soak stands the earliest time out.`,
		say`The numbers are:`,
	]
		.filter(Boolean)
		.join(" ");
}

/** The steps of all rounds in order, each once; loads of one step are one. */
export function stepNames(rounds: readonly ShownRound[]): string[] {
	const names: string[] = [];
	for (const { steps } of rounds) {
		let after = -1;
		for (const { step } of steps) {
			const name = withoutLoad(step);
			const at = names.indexOf(name);
			if (at >= 0) after = Math.max(after, at);
			else names.splice(++after, 0, name);
		}
	}
	return names;
}

/** What the name of a step in one of several loads ends with. */
const IN_LOAD = new RegExp(`${inLoad("", 0, 0).replace(/[()]/g, "\\$&").replaceAll("0", "\\d+")}$`);
const withoutLoad = (step: string) => step.replace(IN_LOAD, "");

function barsOf(
	{ name, kits, steps }: ShownRound,
	day: IsoDate | undefined,
	names: readonly string[],
	mostLetters: number,
): TimelineBar[] {
	const start = steps[0]?.startsAt ?? 0;
	const end = steps.at(-1)?.endsAt ?? 0;
	const span = day === undefined ? `${minutes(end)} min` : roundSpan(start, end, day);
	const rest = `, ${span}, ${counted(kits, "kit")}`;
	const round = shortened(name, mostLetters - rest.length) + rest;
	return steps.map((step) => ({
		round,
		from: step.startsAt - start,
		to: step.endsAt - start,
		sort: step.sort,
		number: names.indexOf(withoutLoad(step.step)) + 1,
		labels: soakWords(step, day),
		beneath: step.sort === "descale" ? say`vinegar, then rinse till no smell` : "",
	}));
}

function soakWords({ sort, startsAt, endsAt }: ShownStep, day: IsoDate | undefined): string[] {
	if (sort !== "soak") return [];
	const at = (value: number) =>
		day === undefined ? say`min ${minutes(value)}` : writeClock(value);
	const out = at(endsAt);
	return [say`soak ${at(startsAt)}, out from ${out}`, say`out ${out}`];
}

function minutes(value: number): string {
	return shownPlain(Math.round(value));
}
