import { expect, test } from "vitest";
import { kindAdvice } from "../../../../src/core/plan/kits/kindAdvice.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { smallUnit } from "../../smallUnit.ts";
import { wholeProblems } from "../../wholeProblems.ts";

const kits = (...kinds: string[]) =>
	["kit,kind,status", ...kinds.map((kind, at) => `K${at},${kind},in_service`)].join("\n");
const USE = "kind,uses_per_100_births,beds,spares";

test.each([
	["one kind", kits("bag", "bag"), null, []],
	[
		"two kinds, nothing said of each",
		kits("suction", "bag"),
		null,
		["kinds-not-told-apart kind-use.csv kind bag, suction"],
	],
	[
		"two kinds, no beds",
		kits("bag", "suction"),
		`${USE}\nbag,10,,\nsuction,4,,`,
		["beds-of-kinds-blank kind-use.csv beds "],
	],
	["two kinds, beds of one", kits("bag", "suction"), `${USE}\nbag,10,2,\nsuction,4,,`, []],
	["two kinds, none beside a bed", kits("bag", "suction"), `${USE}\nbag,10,0,\nsuction,4,,`, []],
	[
		"two kinds, the line of one not to be read",
		kits("bag", "suction"),
		`${USE}\nbag,10,,\nsuction,many,,`,
		[],
	],
	["one kind with its use", kits("bag"), `${USE}\nbag,10,,`, []],
])("%s", (_, kitRows, use, codes) => {
	const read = readWorkbook(smallUnit({ "kits.csv": kitRows, "kind-use.csv": use }));
	const found = wholeProblems(kindAdvice(read));
	expect(found.map((p) => [p.code, p.file, p.column, p.received].join(" "))).toEqual(codes);
});
