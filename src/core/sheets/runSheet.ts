import { computed } from "../column.ts";
import { methods } from "../methods/method.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { choice, yesNo } from "../values/choice.ts";
import { optional } from "../values/valueKind.ts";
import { day, wholeAmount } from "./computedValues.ts";
import { textColumn } from "./textColumn.ts";

export const runSheetSheet = sheet({
	file: "run-sheet.csv",
	title: say`Work sheet`,
	about: say`Every round by the clock, with the kits it prepares for. A round belongs to the day it starts on.`,
	columns: {
		date: computed({
			label: say`Date`,
			unit: "",
			value: day(),
			help: say`Day the round starts on.`,
		}),
		round: textColumn({ label: say`Round`, help: say`Name, or time where it has none.` }),
		step: textColumn({ label: say`Step`, help: say`What is done.` }),
		starts: textColumn({ label: say`Starts`, unit: say`h:min`, help: say`Clock time.` }),
		ends: textColumn({
			label: say`Ends`,
			unit: say`h:min`,
			help: say`Clock time; for the soak, the earliest out.`,
		}),
		hands_on: computed({
			label: say`Somebody is busy`,
			unit: "",
			value: optional(yesNo()),
			help: say`no: waiting.`,
		}),
		kits: computed({
			label: say`Kits`,
			unit: say`kits`,
			value: wholeAmount(),
			decimals: 0,
			help: say`Kits in this step.`,
			added: true,
		}),
		people: computed({
			label: say`People`,
			unit: say`people`,
			value: wholeAmount(),
			decimals: 0,
			help: say`Who is needed; nobody while waiting.`,
			added: true,
		}),
		ends_on: textColumn({
			label: say`Ends on`,
			help: say`The next day, where the step goes past midnight.`,
			added: true,
		}),
		renew: textColumn({
			label: say`Renew unused`,
			help: say`Ready kits that join the round although nobody used them, if they are still unused then; at the round's first step.`,
			added: true,
		}),
		method: computed({
			label: say`Method`,
			unit: "",
			value: optional(choice(methods)),
			help: say`What the step's pieces are disinfected by; blank for work that is the same for all.`,
			added: true,
		}),
		only_if: textColumn({
			label: say`Only if`,
			help: say`Blank: the round runs, because kits wait already or are to be renewed. Else it runs only if a kit was used by then.`,
			added: true,
		}),
	},
});
