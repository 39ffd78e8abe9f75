import type { Problem } from "../../problem.ts";

/** Advice on which the safety of a round hangs, although every number stands. */
const SAFETY: ReadonlySet<string> = new Set([
	"too-few-hands",
	"hands-overloaded",
	"short-soak",
	"no-usable-lot",
	"lot-in-use",
	"too-few-kits",
	"step-lacking",
	"not-dosed-for-wet-kits",
	"stove-booked-twice",
	"pots-booked-twice",
	"no-place-for-water",
	"cooling-too-long",
	"heating-over-a-day",
	"boiled-after-use",
]);

/** Problems that stop a safe round: a number is missing, or what stands is not enough. */
export function stopProblems(problems: readonly Problem[]): Problem[] {
	return problems.filter(({ weight, code }) => weight === "error" || SAFETY.has(code));
}
