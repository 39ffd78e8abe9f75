import { afterAll, describe, expect, test } from "vitest";
import { Coverage } from "./coverage.ts";
import { fuzzed } from "./fuzzed.ts";
import { readers } from "./readers.ts";

const CASES = 10_000;

describe("whatever comes in, a reader ends with what it should", () => {
	const coverage = new Coverage();
	afterAll(() => coverage.stop());

	const each = readers.map(([reader, share]) => ({ name: reader.name, reader, share }));
	test.each(each)("$name", async ({ reader, share }) => {
		const { finds, reached } = await fuzzed(
			reader,
			Math.round((CASES * share) / 1000),
			20_270_301,
			coverage,
		);
		// Shown so that a find can be kept as a test of its own.
		const shown = finds.map(({ what, input }) => [what, Buffer.from(input).toString("latin1")]);
		expect(shown).toEqual([]);
		expect(reached).toBeGreaterThan(20);
	});
});
