import fc from "fast-check";
import { expect, test } from "vitest";
import { unzip } from "../../src/io/unzip.ts";
import { zipReader } from "./readers/zipReader.ts";
import { type Entry, zipOf } from "./zipOf.ts";

/** Seldom one of these: most of a zip is right. */
const seldom = <T>(odd: fc.Arbitrary<T>) =>
	fc.oneof({ weight: 8, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary: odd });
const names = fc.constantFrom("births.csv", "rounds.csv", "a/", "a/kits.csv", "K", "\u00e9.csv");
const entry: fc.Arbitrary<Entry> = fc
	.record({
		name: fc.oneof(
			{ weight: 9, arbitrary: names },
			{ weight: 1, arbitrary: fc.string({ maxLength: 6 }) },
		),
		contents: seldom(fc.uint8Array({ maxLength: 60 })),
		method: fc.constantFrom(0, 8, 8, 8, 9),
		flags: seldom(fc.constantFrom(0, 1)),
		attributes: seldom(fc.constantFrom(0x10, 0o100644 * 0x10000, 0o120777 * 0x10000)),
		says: seldom(
			fc.record(
				{
					crc: fc.nat(),
					size: fc.constantFrom(0, 5, 0xffffffff),
					packedSize: fc.nat(80),
					at: fc.nat(90),
				},
				{ requiredKeys: [] },
			),
		),
		packed: seldom(fc.uint8Array({ maxLength: 20 })),
		extra: seldom(fc.uint8Array({ maxLength: 9 })),
		descriptor: fc.boolean(),
	})
	.map(
		(all) =>
			Object.fromEntries(Object.entries(all).filter(([, one]) => one !== undefined)) as never,
	);

test("whatever zip is put together, it is refused or gives what any program finds in it", () => {
	let read = 0;
	fc.assert(
		fc.property(
			fc.array(entry, { maxLength: 4 }),
			fc.uint8Array({ maxLength: 3 }),
			(entries, after) => {
				const zip = zipOf(entries, after.length > 2 ? { after } : {});
				zipReader.check(zip);
				if (unzip("x.zip", zip).files.length > 0) read++;
			},
		),
		{ seed: 20_270_301, numRuns: 4000 },
	);
	expect(read).toBeGreaterThan(100);
});
