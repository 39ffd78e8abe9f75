import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { problemsSheet } from "./problems.ts";
import { unitColumns } from "./unitColumns.ts";

export const unitsProblemsSheet = sheet({
	file: "units-problems.csv",
	title: say`Problems of the units`,
	about: say`Everything that has to be put right or looked at, unit by unit. What concerns several units names none.`,
	columns: { ...unitColumns(), ...problemsSheet.columns },
});
