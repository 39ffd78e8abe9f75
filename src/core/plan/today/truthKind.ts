import type { Problem } from "../../problem.ts";

/** What a round hangs on, the worst first; those of the store come last, because they stop no round today. */
export const truthKinds = [
	"none_ready",
	"number",
	"water",
	"soak",
	"lot",
	"step",
	"hands",
	"kits",
	"short",
	"late",
	"count",
] as const;

export type TruthKind = (typeof truthKinds)[number];

/** Advice on which safety hangs, although every number stands. */
const KINDS: ReadonlyMap<string, TruthKind> = new Map<string, TruthKind>([
	["no-kit-ready", "none_ready"],
	["stove-booked-twice", "water"],
	["pots-booked-twice", "water"],
	["no-place-for-water", "water"],
	["cooling-too-long", "water"],
	["heating-over-a-day", "water"],
	["boiled-after-use", "water"],
	["room-too-warm", "water"],
	["short-soak", "soak"],
	["not-dosed-for-wet-kits", "soak"],
	["no-usable-lot", "lot"],
	["lot-in-use", "lot"],
	["short-boil", "step"],
	["short-steam", "step"],
	["step-lacking", "step"],
	["mixing-not-marked", "step"],
	["too-few-hands", "hands"],
	["hands-overloaded", "hands"],
	["too-few-kits", "kits"],
	["short-before-order", "short"],
	["order-late", "late"],
	["delivery-overdue", "late"],
	["count-too-old", "count"],
]);

/** Which truth a problem tells; undefined where safety does not hang on it. */
export function truthKind({ weight, code }: Problem): TruthKind | undefined {
	return KINDS.get(code) ?? (weight === "error" ? "number" : undefined);
}
