import { expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { isCounted, wholePiecesOfGroup } from "../../../src/core/stock/wholePieces.ts";
import { expectWithin } from "../../expectWithin.ts";
import { columnOf, contentOf } from "../contentOf.ts";
import { unitWith } from "../smallUnit.ts";

test.each([
	["piece", true],
	["Pairs", true],
	[" tablet ", true],
	["boîte", true],
	["roll", true],
	["set", true],
	["box", true],
	["boxes", true],
	["pièce", true],
	["pièces", true],
	["paire", true],
	["comprimé", true],
	["jeu", true],
	["jeux", true],
	["rouleau", true],
	["L", false],
	["g", false],
	["piece of cloth in metres", false],
	["tenth of a piece", false],
])("%s is counted: %s", (measure, counted) => {
	expect(isCounted(measure)).toBe(counted);
});

test("amounts that come in whole pieces may come as they are", () => {
	const counts = { first: 2, chance: Float64Array.of(0.5, 0.5) };
	const turned = wholePiecesOfGroup.follows?.turned({ counts, size: 3 }, { use: 9 });
	expect(turned).toEqual({ counts, size: 3 });
});

/** Four tenths of a piece a round: the rounds of a day or a week come to parts of pieces. */
const planned = (measure: string, other = "L") =>
	plan(
		unitWith(
			{},
			{
				"usage.csv": "item,basis,quantity,note\ncloth,round,0.4,",
				"items.csv": `item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level
					cloth,gauze,${measure},1,,7,0,0.95
					rag,gauze,${other},1,,7,0,0.95
					liquid,other,L,5,3,7,10,0.95`,
			},
		),
	);
const asideOf = (measure: string) =>
	contentOf(planned(measure), "supply-use.csv", "item", "set_aside").find(
		([item]) => item === "cloth",
	)?.[1];

test("pieces are set aside whole, litres are not", () => {
	expect(asideOf("piece")).toBe(3);
	expectWithin(asideOf("L") as number, 2.8, 1e-9, "L");
});

// Contract, calculations.md 8: whole pieces where the measure is pieces.
test("so is the gauze of a day and of the plan, where all items of the group are counted", () => {
	const gauzeOf = (measure: string, other: string) => {
		const made = planned(measure, other);
		const [week] = contentOf(made, "week-total.csv", "measure_of", "set_aside").flatMap(
			([name, aside]) => (name === "gauze_pieces" ? [aside] : []),
		);
		return [columnOf(made, "day-plan.csv", "gauze_pieces_set_aside")[0], week] as number[];
	};
	expect(gauzeOf("piece", "pair")).toEqual([1, 3]);
	expectWithin(gauzeOf("piece", "m")[0], 0.8, 1e-9, "pieces");
	expectWithin(gauzeOf("piece", "m")[1], 2.8, 1e-9, "pieces");
});

test("and the next smaller amount is a whole piece less, not the part of one that may come", () => {
	// Seven rounds take 2.8: three pieces. Six take 2.4, which are three as well; five take two.
	const rows = contentOf(planned("piece", "pair"), "how-safe.csv", "promise", "day", "one_less");
	const less = rows.find(([what, day]) => what === "gauze_pieces" && day === null)?.[2];
	expectWithin(less as number, 2, 1e-9, "pieces");
});
