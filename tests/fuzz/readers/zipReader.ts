import assert from "node:assert/strict";
import { unzipSync } from "fflate";
import { unzip } from "../../../src/io/unzip.ts";
import { MOST_BYTES, MOST_ENTRIES } from "../../../src/io/zipRefusals.ts";
import { expectPlain } from "../expectPlain.ts";
import type { Reader } from "../fuzzed.ts";
import { sampleFile } from "../sample.ts";
import { TROUBLE, textBytes } from "../textBytes.ts";
import { zipOf } from "../zipOf.ts";

const births = sampleFile("births.csv", 4);
const signatures = [
	"PK\x03\x04",
	"PK\x01\x02",
	"PK\x05\x06",
	"PK\x06\x06",
	"PK\x06\x07",
	"PK\x07\x08",
];

export const zipReader: Reader = {
	name: "zip",
	seeds: [
		zipOf([{ name: "births.csv", contents: births }]),
		zipOf([
			{ name: "unit/", method: 0 },
			{ name: "unit/births.csv", contents: births, method: 0 },
			{ name: "unit/rounds.csv", contents: sampleFile("rounds.csv"), descriptor: true },
		]),
		zipOf([{ name: "a.csv" }, { name: "é.csv", contents: textBytes("a\n") }], {
			comment: textBytes("from the ward"),
		}),
	],
	words: [...TROUBLE, "..", "/", "\\", "C:", "CON", ".csv", "births.csv", ...signatures].map(
		textBytes,
	),
	check(input) {
		const { files, problems } = unzip("x.zip", input);
		expectPlain(problems, Buffer.from(input).toString("latin1"));
		const leftOut = problems.filter(({ code }) => code === "left-out-entry").length;
		if (problems.length > leftOut) {
			assert.deepEqual([files.length, problems.length], [0, 1], "refused, and yet read");
			return;
		}
		assert.ok(files.length <= MOST_ENTRIES);
		const total = files.reduce((sum, { bytes }) => sum + bytes.length, 0);
		assert.ok(
			total <= MOST_BYTES && total <= input.length * 1100,
			"more came out than can be in it",
		);
		expectSameAsOthers(
			input,
			files.map(({ bytes }) => bytes),
			leftOut,
		);
	},
};

/** Undefined where the library refuses it. */
function byTheLibrary(input: Uint8Array): ReturnType<typeof unzipSync> | undefined {
	try {
		return unzipSync(input);
	} catch {
		return undefined;
	}
}

/** No other program reads another thing from it: the library that packs finds the same contents, and what was left out. */
function expectSameAsOthers(
	input: Uint8Array,
	contents: readonly Uint8Array[],
	leftOut: number,
): void {
	const found = byTheLibrary(input);
	// It refuses the whole zip for an entry that cannot be unpacked, also for one that is left out here.
	if (!found) {
		assert.ok(leftOut > 0, "others find nothing");
		return;
	}
	const others = Object.entries(found).filter(([name]) => !/[/\\]$/.test(name));
	const left = others.map(([, bytes]) => Buffer.from(bytes).toString("latin1"));
	for (const bytes of contents) {
		const at = left.indexOf(Buffer.from(bytes).toString("latin1"));
		assert.ok(at >= 0, "something else than others find");
		left.splice(at, 1);
	}
	assert.ok(left.length <= leftOut, "less than others find");
}
