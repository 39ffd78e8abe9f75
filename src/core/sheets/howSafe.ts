import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { choice, yesNo } from "../values/choice.ts";
import { optional } from "../values/valueKind.ts";
import { amount, day } from "./computedValues.ts";
import { mixedAmount, seeUnit } from "./mixedAmount.ts";
import { measures } from "./planMeasures.ts";
import { textColumn } from "./textColumn.ts";

const of100 = say`of 100`;

/** What the plan sets aside beside its measures. */
export const otherPromises = ["kits_needed", "boiled_for_rounds", "order"] as const;

export const howSafeSheet = sheet({
	file: "how-safe.csv",
	title: say`How safe each number is`,
	about: say`What to prepare for, how surely it is enough beside what was asked, what that costs, and what would change it. Nobody can prepare part of a kit or of a round, so many numbers are safer than asked.`,
	columns: {
		promise: computed({
			label: say`What`,
			unit: "",
			value: choice([...measures, ...otherPromises]),
			help: say`What to prepare for.`,
		}),
		of: textColumn({ label: say`Of`, help: say`Kind of kit, or item ordered; blank elsewhere.` }),
		day: computed({
			label: say`Day`,
			unit: "",
			value: optional(day()),
			help: say`Blank: for the whole plan.`,
		}),
		set_aside: mixedAmount({
			label: say`Prepare for`,
			unit: seeUnit,
			rounds: "up",
			help: say`Of an order: all there will be when it has come.`,
		}),
		expected: mixedAmount({
			label: say`Average`,
			unit: seeUnit,
			help: say`On average, of an order wastage included; blank for kits needed.`,
		}),
		unit: textColumn({ label: say`Unit`, coded: true, help: say`Unit of the amounts.` }),
		asked_of_100: computed({
			label: say`Asked`,
			unit: of100,
			value: amount(),
			decimals: 1,
			help: say`As surely as your settings ask: on so many of 100 such days, plans or orders; for kits, so many of 100 times one is needed.`,
		}),
		enough_of_100: computed({
			label: say`Enough on`,
			unit: of100,
			value: amount(),
			decimals: 2,
			help: say`How surely the number is enough.`,
		}),
		one_less: mixedAmount({
			label: say`The next smaller`,
			unit: seeUnit,
			help: say`There is nothing between; blank where nothing is smaller.`,
		}),
		one_less_of_100: computed({
			label: say`That is enough on`,
			unit: of100,
			value: amount(),
			decimals: 2,
			help: say`How surely the next smaller amount would be enough.`,
		}),
		beyond: mixedAmount({
			label: say`Beyond the average`,
			unit: seeUnit,
			help: say`Prepared for and on average not used; of an order, beyond what was to be ordered.`,
		}),
		cost: computed({
			label: say`That costs`,
			unit: say`currency`,
			value: amount(),
			decimals: 2,
			help: say`Blank where no price is known, or nothing is bought. What keeps can be used later.`,
		}),
		far_safer: computed({
			label: say`Far safer than asked`,
			unit: "",
			value: optional(yesNo()),
			help: say`yes: it falls short at most a fifth as often as was asked, a rule of this program.`,
		}),
		lever: textColumn({
			label: say`What would change it`,
			help: say`Where it is far safer than asked: what you could set otherwise, if your protocol allows it.`,
		}),
	},
});
