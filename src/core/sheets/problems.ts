import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { wholeAmount, words } from "./computedValues.ts";

export const problemsSheet = sheet({
	file: "problems.csv",
	title: "Problems",
	about: "What has to be put right, or looked at, and where.",
	columns: {
		code: computed({
			label: "Kind",
			unit: "",
			value: words(),
			help: "Name of the kind of problem.",
		}),
		file: computed({ label: "File", unit: "", value: words(), help: "Which file." }),
		line: computed({
			label: "Line",
			unit: "",
			value: wholeAmount(),
			help: "The first line names the columns.",
		}),
		column: computed({ label: "Column", unit: "", value: words(), help: "Which column." }),
		received: computed({ label: "Found", unit: "", value: words(), help: "What was found." }),
		allowed: computed({ label: "Allowed", unit: "", value: words(), help: "What is allowed." }),
		message: computed({ label: "In words", unit: "", value: words(), help: "The whole problem." }),
		weight: computed({
			label: "Weight",
			unit: "",
			value: words(),
			help: "error: a number cannot be given. advice: the numbers stand.",
			added: true,
		}),
	},
});
