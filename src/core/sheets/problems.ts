import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { wholeAmount, words } from "./computedValues.ts";

export const problemsSheet = sheet({
	file: "problems.csv",
	title: say`Problems`,
	about: say`What has to be put right, or looked at, and where.`,
	columns: {
		code: computed({
			label: say`Kind`,
			unit: "",
			value: words(),
			help: say`Short name of the kind of problem, for programs.`,
		}),
		file: computed({ label: say`File`, unit: "", value: words(), help: say`Which file.` }),
		line: computed({
			label: say`Line`,
			unit: "",
			value: wholeAmount(),
			help: say`The first line names the columns.`,
		}),
		column: computed({ label: say`Column`, unit: "", value: words(), help: say`Which column.` }),
		received: computed({ label: say`Found`, unit: "", value: words(), help: say`What was found.` }),
		allowed: computed({
			label: say`Allowed`,
			unit: "",
			value: words(),
			help: say`What is allowed.`,
		}),
		message: computed({
			label: say`In words`,
			unit: "",
			value: words(),
			help: say`The whole problem.`,
		}),
		weight: computed({
			label: say`Severity`,
			unit: "",
			value: words(),
			help: say`Error: a number cannot be given. Advice: the numbers stand.`,
			added: true,
		}),
	},
});
