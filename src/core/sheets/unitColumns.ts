import { say } from "../say.ts";
import { textColumn } from "./textColumn.ts";

/** Whose a row is, in every file of a district. */
export const unitColumns = () => ({
	unit: textColumn({ label: say`Unit`, help: say`Name of the unit, as its workbook has it.` }),
	path: textColumn({
		label: say`From`,
		help: say`Folder or file of its workbook, which tells units of one name apart.`,
	}),
});
