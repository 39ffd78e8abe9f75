import { typed } from "../column.ts";
import { say } from "../say.ts";
import { note } from "../values/note.ts";

/** By what a line is known again in another copy of the workbook. The page writes it; nobody has to. */
export function lineId() {
	return typed({
		label: say`Mark of the line`,
		unit: "",
		value: note(),
		help: say`Written by the page, the same for all lines of one visit, so that two copies of the workbook can be brought together. Leave it as it is, or blank.`,
		added: true,
		behind: true,
	});
}
