import { expect, test } from "vitest";
import { problemsOf } from "../../../../src/core/outcome.ts";
import { treatedKits } from "../../../../src/core/plan/methods/treatedKits.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { unitWith } from "../../smallUnit.ts";

const KINDS = "kind,piece,count\nset,bag,1\nset,mask,2\nbulb,bulb,1";
const KITS = "kit,kind,status,ready_since,note\nA,set,in_service,,";
const TREATMENTS = "kind,piece,method,note";

interface Files {
	readonly kinds?: string;
	readonly kits?: string;
	readonly treatments?: string;
}

/** The methods by which the kits of a kind are treated, or why that is not known. */
function methodsOf(kind: string, { kinds = KINDS, kits = KITS, treatments = "" }: Files): string[] {
	const { outcome } = treatedKits(
		readWorkbook(
			unitWith(
				{ method: "boiling" },
				{
					"kinds.csv": kinds,
					"kits.csv": kits,
					"treatments.csv": `${TREATMENTS}${treatments}`,
				},
			),
		),
		kind,
	);
	return outcome.ok ? [...outcome.value.methods] : problemsOf(outcome).map(({ code }) => code);
}

const BAD_PIECE = `${KINDS}\nset,valve,many`;
const STEAM = "\nset,mask,steam,";

test.each<[string, string, Files, string[]]>([
	["all pieces go one way", "set", {}, ["boiling"]],
	["one goes its own", "set", { treatments: STEAM }, ["boiling", "steam"]],
	["one of another kind does", "bulb", { treatments: STEAM }, ["boiling"]],
	["all kits are of one kind", "", { treatments: STEAM }, ["boiling", "steam"]],
	["of a kind nobody owns nothing is asked", "", { treatments: "\nbulb,bulb,steam," }, ["boiling"]],
	[
		"without kits all kinds listed are asked",
		"",
		{ kits: "kit,kind,status,ready_since,note", treatments: "\nbulb,bulb,steam," },
		["boiling", "steam"],
	],
	["a piece that cannot be read does not matter", "set", { kinds: BAD_PIECE }, ["boiling"]],
	[
		"it matters where pieces go different ways",
		"set",
		{ kinds: BAD_PIECE, treatments: STEAM },
		["bad-cell"],
	],
	["a treatment that cannot be read", "set", { treatments: "\nset,mask,magic," }, ["bad-cell"]],
	[
		"and a piece that cannot: both are named",
		"set",
		{ kinds: BAD_PIECE, treatments: "\nset,mask,magic," },
		["bad-cell", "bad-cell"],
	],
])("%s", (_, kind, files, methods) => {
	expect(methodsOf(kind, files)).toEqual(methods);
});
