import { createHash } from "node:crypto";
import type { Calculation } from "../../src/core/calculation.ts";
import { outcomeOf } from "./answerOf.ts";

/** Of a long list so many are changed. */
const FEW = 3;
/** Of a calculation at most so many are tried. */
const MOST = 80;
const DAY = /^\d{4}-\d\d-\d\d$/;
/** Of other inputs these may go on for seconds; they have tests of their own. */
const LONG = [
	"kit_cover",
	"use_set_aside",
	"chlorine_set_aside",
	"kits_renewed_expected",
	"unmet_per_1000_uses",
	"loads_standing",
	"forecast",
	"moment",
	"unmet_then",
	"needs_met",
	"one_less",
	"steps_of_round",
];
const FLIPPED: Readonly<Record<string, string>> = { yes: "no", no: "yes" };

export function isTriedAround({ key }: Calculation): boolean {
	return !LONG.includes(key);
}

/**
 * What a calculation gives for inputs around its example, in short: each number nought, halved,
 * doubled, one more, not there, or as large as another; lists without their ends, turned round
 * or empty; what is yes, no; a day the next, or another that is there.
 */
export function aroundExample(calculation: Calculation): string {
	const inputs: unknown = calculation.example?.inputs ?? {};
	const leaves = leavesIn(inputs);
	const tried = [
		inputs,
		...leaves.flatMap((leaf) =>
			othersOf(leaf, leaves).map((other) => withLeaf(inputs, leaf.path, other)),
		),
	];
	const said = tried.slice(0, MOST).map((each) => saidBy(calculation, each as object));
	return createHash("sha256").update(JSON.stringify(said)).digest("hex").slice(0, 12);
}

interface Leaf {
	readonly path: readonly string[];
	readonly value: unknown;
}

function leavesIn(value: unknown, path: readonly string[] = []): Leaf[] {
	if (typeof value !== "object" || value === null) return [{ path, value }];
	const inner = ArrayBuffer.isView(value)
		? []
		: Object.entries(value)
				.slice(0, Array.isArray(value) ? FEW : undefined)
				.flatMap(([key, each]) => leavesIn(each, [...path, key]));
	return Array.isArray(value) ? [{ path, value }, ...inner] : inner;
}

/** What may stand in the place of a leaf. */
function othersOf({ value }: Leaf, leaves: readonly Leaf[]): unknown[] {
	const there = new Set(leaves.map((leaf) => leaf.value).filter((other) => other !== value));
	if (typeof value === "number") {
		const numbers = [...there].filter((other) => typeof other === "number");
		return [0, value / 2, value * 2, value + 1, null, ...numbers.slice(0, FEW)];
	}
	if (value === null) return [...there].filter((other) => typeof other === "number").slice(0, FEW);
	if (typeof value === "boolean") return [!value];
	if (Array.isArray(value)) return [value.slice(1), value.slice(0, -1), value.toReversed(), []];
	if (typeof value !== "string") return [];
	if (value in FLIPPED) return [FLIPPED[value]];
	return [...there]
		.filter((other) => typeof other === "string" && DAY.test(other) === DAY.test(value))
		.slice(0, FEW);
}

function withLeaf(value: unknown, [key, ...path]: readonly string[], other: unknown): unknown {
	if (key === undefined) return other;
	if (Array.isArray(value))
		return value.with(Number(key), withLeaf(value[Number(key)], path, other));
	return {
		...(value as object),
		[key]: withLeaf((value as Record<string, unknown>)[key], path, other),
	};
}

function saidBy(calculation: Calculation, inputs: object): unknown {
	try {
		const outcome = outcomeOf(calculation, inputs);
		return outcome.ok ? plain(outcome.value) : outcome.problems.map(({ code }) => code);
	} catch {
		return "no such inputs";
	}
}

/** As it can be written: numbers to nine digits, functions of days by two of them. */
function plain(value: unknown): unknown {
	if (typeof value === "number")
		return Number.isFinite(value) ? Number(value.toPrecision(9)) : String(value);
	if (typeof value === "function") return [0, 30].map((day) => plain(value(day)));
	if (ArrayBuffer.isView(value)) return Array.from(value as Float64Array, plain);
	if (Array.isArray(value)) return value.map(plain);
	if (typeof value !== "object" || value === null) return value;
	return Object.entries(value).map(([key, each]) => [key, plain(each)]);
}
