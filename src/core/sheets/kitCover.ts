import { computed } from "../column.ts";
import { LOOKED_AT_MINUTES } from "../kits/awayThroughDay.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { choice, yesNo } from "../values/choice.ts";
import { optional } from "../values/valueKind.ts";
import { amount, wholeAmount } from "./computedValues.ts";
import { textColumn } from "./textColumn.ts";

/** How far the curve goes on beyond the kits that the risk asks for, and around those needed. */
export const CURVE_BEYOND = 3;
/** The same where even then the sheet would be too long. */
export const CURVE_NEAREST = 1;
/** Where the whole curves of all kinds would be longer, less of each is looked at. */
export const MOST_ROWS = 60;

export const kitCoverSheet = sheet({
	file: "kit-cover.csv",
	title: say`How many kits are enough`,
	about: say`For each number of kits, how many of 1\u202f000 times no kit is ready when needed.`,
	columns: {
		kits: computed({
			label: say`Kits`,
			unit: say`kits`,
			value: wholeAmount(),
			decimals: 0,
			help: say`Number of kits in service: from 1 to ${CURVE_BEYOND} more than the risk asks for, those in service, and ${CURVE_BEYOND} to either side of the number needed. Where that would be more than ${MOST_ROWS} rows for all kinds together, from ${CURVE_BEYOND} fewer than the risk asks for on; where it still is, ${CURVE_NEAREST} to either side of both.`,
		}),
		unmet_per_1000_uses: computed({
			label: say`Times no kit is ready when needed`,
			unit: say`per 1\u202f000 uses`,
			value: amount(),
			decimals: 3,
			help: say`Smaller is safer. Where a kit is reprocessed after each use, in less than ${LOOKED_AT_MINUTES} minutes of work, the day is looked at about every ${LOOKED_AT_MINUTES} minutes.`,
		}),
		enough: computed({
			label: say`Enough`,
			unit: "",
			value: yesNo(),
			help: say`yes from the number of kits needed on.`,
		}),
		deciding: computed({
			label: say`Decided by`,
			unit: "",
			value: optional(choice(["risk", "beds"])),
			help: say`At the number needed: the times no kit is ready when needed, or the delivery beds and spare kits.`,
		}),
		kind: textColumn({
			label: say`Kind`,
			help: say`Blank where all kits are alike.`,
			ifAny: true,
			added: true,
		}),
	},
});
