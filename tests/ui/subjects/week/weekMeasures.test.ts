import { expect, test } from "vitest";
import { measures, planMeasures } from "../../../../src/core/sheets/planMeasures.ts";
import { shownWord } from "../../../../src/ui/format/choiceWords.ts";
import { weekMeasures } from "../../../../src/ui/subjects/week/weekMeasures.ts";

test("the plan as people read it: columns of the day plan, in the order of the work", () => {
	expect(weekMeasures.map(({ large, small }) => [large, small?.column])).toEqual([
		["births_expected", "births_set_aside"],
		["kits_to_reprocess_set_aside", "kits_to_reprocess_expected"],
		["kits_needed", "kits_in_service"],
		["rounds_set_aside", "rounds_expected"],
		["solution_litres_set_aside", "solution_litres_expected"],
		["chlorine_quantity_set_aside", undefined],
		["boiled_litres_set_aside", "boiled_litres_expected"],
		["boiled_buckets_set_aside", undefined],
		["vinegar_litres_set_aside", "vinegar_litres_expected"],
		["gauze_pieces_set_aside", "gauze_pieces_expected"],
	]);
});

test("every measure that says where it stands, stands there with its total", () => {
	const withRow = measures.filter((measure) => planMeasures[measure].row);
	expect(weekMeasures.flatMap(({ total }) => total ?? [])).toEqual(withRow);
});

test("measures of one kind of work stand together", () => {
	const groups = weekMeasures.map(({ group }) => group);
	const starts = groups.filter((group, at) => group !== groups[at - 1]);
	expect(starts).toEqual([...new Set(groups)]);
});

test.each(measures)("the total of %s has a word that people read", (measure) => {
	expect(shownWord(measure)).toBe(planMeasures[measure].word);
	expect(planMeasures[measure].word).not.toContain("_");
});
