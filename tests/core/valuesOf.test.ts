import { expect, test } from "vitest";
import { type Figure, nameFigure, refusedFigure } from "../../src/core/calculation.ts";
import { nowhere } from "../../src/core/problem.ts";
import { stockSheet } from "../../src/core/sheets/stock.ts";
import { valuesOf } from "../../src/core/valuesOf.ts";

// calculations.md: a missing input gives no result; where rows are sent on, that is a blank.
test("what has no answer is null, and blank in a column of text", () => {
	const none = refusedFigure("", "", nowhere);
	const { lot, on_hand, remark } = valuesOf(stockSheet, {
		...(Object.fromEntries(Object.keys(stockSheet.columns).map((key) => [key, none])) as Record<
			keyof typeof stockSheet.columns,
			Figure<never>
		>),
		lot: nameFigure("", "L1"),
	});
	expect({ lot, on_hand, remark }).toEqual({ lot: "L1", on_hand: null, remark: "" });
});
