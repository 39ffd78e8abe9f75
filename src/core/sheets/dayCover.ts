import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { amount, wholeAmount } from "./computedValues.ts";
import { textColumn } from "./textColumn.ts";

export const dayCoverSheet = sheet({
	file: "day-cover.csv",
	title: say`Weak hours of the day`,
	about: say`Kits ready on average at each hour of the plan's busiest day, and how many of 1\u202f000 times no kit would be ready when needed at that hour: the weak hours show.`,
	columns: {
		kind: textColumn({ label: say`Kind`, help: say`Blank where all kits are alike.`, ifAny: true }),
		hour: computed({
			label: say`Hour`,
			unit: "h",
			value: wholeAmount(),
			decimals: 0,
			help: say`The figures hold for half past.`,
		}),
		ready_expected: computed({
			label: say`Kits ready, average`,
			unit: say`kits`,
			value: amount(),
			decimals: 1,
			help: say`Mean number ready at half past the hour.`,
		}),
		none_ready_per_1000: computed({
			label: say`Times no kit is ready when needed`,
			unit: say`per 1\u202f000 at that hour`,
			value: amount(),
			decimals: 3,
			help: say`Smaller is safer.`,
		}),
	},
});
