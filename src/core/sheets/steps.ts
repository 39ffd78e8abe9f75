import { typed } from "../column.ts";
import { methods } from "../methods/method.ts";
import { stepBases } from "../rounds/step.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { choice, yesNo } from "../values/choice.ts";
import { name } from "../values/name.ts";
import { number } from "../values/number.ts";
import { optional } from "../values/valueKind.ts";

export const stepsSheet = sheet({
	file: "steps.csv",
	title: say`Steps of a round`,
	about: say`What is done in a round, in order, and how long it takes: once a round, for each kit, or for each load of the soak.`,
	unique: ["step"],
	columns: {
		step: typed({ label: say`Step`, unit: "", value: name(), help: say`What is done.` }),
		basis: typed({
			label: say`Counted`,
			unit: "",
			value: choice(stepBases),
			help: say`round: once; kit: for each kit, shared among the people; load: for each filling of the soak container, the boiling pot or the steamer.`,
		}),
		minutes: typed({
			label: say`Minutes`,
			unit: "min",
			value: number({ min: 0, max: 1440 }),
			decimals: 1,
			help: say`For one round, kit or load.`,
		}),
		hands_on: typed({
			label: say`Somebody is busy`,
			unit: "",
			value: yesNo(),
			help: say`yes: someone is busy; no: waiting, such as the soak.`,
		}),
		method: typed({
			label: say`Only for`,
			unit: "",
			value: optional(choice(methods)),
			help: say`The method that the step belongs to; it is done where pieces go that way. Blank: whatever the method.`,
			added: true,
		}),
	},
});
