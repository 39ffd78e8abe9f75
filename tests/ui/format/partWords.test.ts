import { expect, test } from "vitest";
import type { Figure } from "../../../src/core/calculation.ts";
import { plan } from "../../../src/core/plan/plan.ts";
import { shownFigure } from "../../../src/ui/format/shownFigure.ts";
import { readDemo } from "../../readDemo.ts";

/** A name inside the program: perRound, valve_moves. */
const OURS = /[a-z]{2,}[A-Z_]/;

test("a result of several parts is shown under names for people, or without them", () => {
	const shown = new Set<string>();
	const seen = new Set<Figure<unknown>>();
	const lookAt = (figure: Figure<unknown>): void => {
		if (seen.has(figure)) return;
		seen.add(figure);
		shown.add(shownFigure(figure));
		if (figure.origin.kind === "computed") Object.values(figure.origin.inputs).forEach(lookAt);
	};
	for (const { rows } of Object.values(plan(readDemo().workbook).tables))
		for (const row of rows) Object.values<Figure<unknown>>(row).forEach(lookAt);
	expect([...shown].filter((words) => OURS.test(words))).toEqual([]);
	expect([...shown].filter((words) => /\bminutes planned \d/.test(words))).not.toEqual([]);
});
