import { describe, expect, test } from "vitest";
import type { Mark as SourceMark } from "../../src/core/source.ts";
import { expectWithin } from "../expectWithin.ts";

/** "computed": worked out from a formula with two independent tools, published by nobody. */
export type Mark = SourceMark | "computed";

/** Where a figure stands in print, and how sure that is. */
export interface Printed {
	readonly text: string;
	/** Page, table or section. */
	readonly place: string;
	readonly mark: Mark;
}

/** One published or recomputed figure, against which the program is held. */
export interface ReferenceCase<I> {
	readonly id: string;
	readonly inputs: I;
	readonly expected: number;
	readonly tolerance: number;
	readonly unit: string;
	/** Why the tolerance is what it is. */
	readonly why: string;
	readonly source: Printed;
}

/** Runs every case; one that gives no value fails. */
export function checkCases<I>(
	subject: string,
	cases: readonly ReferenceCase<I>[],
	compute: (inputs: I) => number | undefined,
): void {
	describe(subject, () => {
		test("has cases, each with a name of its own", () => {
			expect(cases.length).toBeGreaterThan(0);
			expect(new Set(cases.map((c) => c.id)).size).toBe(cases.length);
		});
		test.each(cases)(
			"$id: $expected $unit ($source.mark)",
			({ inputs, expected, tolerance, unit }) => {
				expectWithin(compute(inputs), expected, tolerance, unit);
			},
		);
	});
}

export function printed(text: string, place: string, mark: Mark = "seen"): Printed {
	return { text, place, mark };
}
