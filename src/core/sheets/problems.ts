import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { wholeAmount } from "./computedValues.ts";
import { textColumn } from "./textColumn.ts";

export const problemsSheet = sheet({
	file: "problems.csv",
	title: say`Problems`,
	about: say`What has to be put right, or looked at, and where.`,
	columns: {
		code: textColumn({
			label: say`Kind`,
			help: say`Short name of the kind of problem, for programs.`,
		}),
		file: textColumn({ label: say`File`, help: say`Which file.` }),
		line: computed({
			label: say`Line`,
			unit: "",
			value: wholeAmount(),
			help: say`The first line names the columns.`,
		}),
		column: textColumn({ label: say`Column`, help: say`Which column.` }),
		received: textColumn({ label: say`Found`, help: say`What was found.` }),
		allowed: textColumn({ label: say`Allowed`, help: say`What is allowed.` }),
		message: textColumn({ label: say`In words`, help: say`The whole problem.` }),
		weight: textColumn({
			label: say`Severity`,
			help: say`Error: a number cannot be given. Advice: the numbers stand.`,
			added: true,
		}),
	},
});
