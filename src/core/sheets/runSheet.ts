import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { yesNo } from "../values/choice.ts";
import { optional } from "../values/valueKind.ts";
import { day, wholeAmount, words } from "./computedValues.ts";

export const runSheetSheet = sheet({
	file: "run-sheet.csv",
	title: "Run sheet",
	about:
		"Every round by the clock, with the kits set aside for it. A round belongs to the day it starts on.",
	columns: {
		date: computed({ label: "Date", unit: "", value: day(), help: "Day the round starts on." }),
		round: computed({
			label: "Round",
			unit: "",
			value: words(),
			help: "Name, or time where it has none.",
		}),
		step: computed({ label: "Step", unit: "", value: words(), help: "What is done." }),
		starts: computed({ label: "Starts", unit: "h:min", value: words(), help: "Clock time." }),
		ends: computed({
			label: "Ends",
			unit: "h:min",
			value: words(),
			help: "Clock time; for the soak, the earliest out.",
		}),
		hands_on: computed({
			label: "Hands on",
			unit: "",
			value: optional(yesNo()),
			help: "no: waiting.",
		}),
		kits: computed({
			label: "Kits",
			unit: "kits",
			value: wholeAmount(),
			decimals: 0,
			help: "Kits in this step.",
			added: true,
		}),
		people: computed({
			label: "People",
			unit: "people",
			value: wholeAmount(),
			decimals: 0,
			help: "Who is needed; nobody while waiting.",
			added: true,
		}),
		ends_on: computed({
			label: "Ends on",
			unit: "",
			value: words(),
			help: "The next day, where the step goes past midnight.",
			added: true,
		}),
	},
});
