import { answer, noAnswer, type Outcome, problemsOf, valueIn } from "../../outcome.ts";
import type { Problem } from "../../problem.ts";
import { readSettings } from "../../read/readSettings.ts";
import { textsOf } from "../../read/textsOf.ts";
import { type ProposedStep, proposedSteps } from "../../rounds/proposedSteps.ts";
import { say } from "../../say.ts";
import { stepsSheet } from "../../sheets/steps.ts";
import { unitSheet } from "../../sheets/unit.ts";
import { type Workbook, withTable } from "../../workbook.ts";
import type { BeginEntry } from "./beginEntry.ts";
import { proposedRow } from "./proposedRow.ts";
import { withUsesTaken } from "./withUsesTaken.ts";

/** The steps to propose for this unit's method, as long as the unit asks for; none where that cannot be read. */
export function stepsFor(workbook: Workbook): Outcome<readonly ProposedStep[]> {
	const { settings } = readSettings(workbook.tables[unitSheet.file]);
	const { method, soak_minutes, disinfect_boil_minutes, steam_minutes } = settings;
	const [soak, boil, steam] = [soak_minutes, disinfect_boil_minutes, steam_minutes].map(valueIn);
	const known = [method, soak_minutes, disinfect_boil_minutes, steam_minutes];
	if (!method.outcome.ok || soak === undefined || boil === undefined || steam === undefined)
		return noAnswer(...known.flatMap(({ outcome }) => problemsOf(outcome)));
	return answer(proposedSteps(method.outcome.value, { soak, boil, steam }));
}

function listed(workbook: Workbook): number {
	const { rows } = textsOf(workbook, stepsSheet);
	return rows.filter((row) => row.some((cell) => cell.trim() !== "")).length;
}

/** Begins the text by which the proposal is taken; after it stands which of its uses, all where nothing does. */
export const TAKEN = "taken";

/** The steps of a round with what they use: taken as proposed, or typed by the unit itself into their sheet. Steps that are there are never replaced. */
export const stepsEntry: BeginEntry = {
	key: "steps",
	label: say`Steps of a round`,
	help: say`A proposal of the steps and of what they use up, to be checked against your unit's own protocol and the maker's instructions. Time your own steps as soon as you can; they are changed in the sheet “Steps of a round”.`,
	unit: () => "",
	allowed: () => say`the steps proposed, or your own in their sheet`,
	read(workbook) {
		const count = listed(workbook);
		if (count === 0) return "";
		return count === 1 ? say`1 step is listed` : say`${count} steps are listed`;
	},
	write(workbook, text) {
		const [taken, ...choice] = text.split(" ");
		const withUses = (book: Workbook) =>
			taken === TAKEN
				? withUsesTaken(book, choice.length > 0 ? choice.join(" ") : undefined)
				: book;
		if (listed(workbook) > 0) return withUses(workbook);
		const proposed = stepsFor(workbook);
		if (!proposed.ok) return (proposed.problems[0] as Problem).message;
		const steps = textsOf(workbook, stepsSheet);
		const rows = proposed.value.map((step) => proposedRow(steps, step));
		return withUses(withTable(workbook, stepsSheet.file, { header: steps.header, rows }));
	},
};
