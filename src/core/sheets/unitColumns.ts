import { computed } from "../column.ts";
import { say } from "../say.ts";
import { words } from "./computedValues.ts";

/** Whose a row is, in every file of a district. */
export const unitColumns = () => ({
	unit: computed({
		label: say`Unit`,
		unit: "",
		value: words(),
		help: say`Name of the unit, as its workbook has it.`,
	}),
	path: computed({
		label: say`From`,
		unit: "",
		value: words(),
		help: say`Folder or file of its workbook, which tells units of one name apart.`,
	}),
});
