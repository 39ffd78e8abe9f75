import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { amount, wholeAmount } from "./computedValues.ts";
import { textColumn } from "./textColumn.ts";

/**
 * With more rounds a day than this, or more rounds times kinds, other hours are tried only for
 * the two rounds around the longest gap: each hour tried is a plan by itself. 4 rounds with 7
 * kinds are beyond it already. With very many rounds times kinds no other hour is tried at all.
 */
export const MOST_ROUNDS_MOVED = { rounds: 8, timesKinds: 24, timesKindsOfTwo: 64 };

/** Of 1,000 needs, so few can find no kit ready that other hours are not tried: less is not shown, and no limit asks for it. */
export const LEAST_UNMET = 0.001;

export const leversSheet = sheet({
	file: "levers.csv",
	title: say`What would help`,
	about: say`The plan as it is beside one change at a time, first the change that spares most times without a ready kit.`,
	columns: {
		kind: textColumn({ label: say`Kind`, help: say`Blank where all kits are alike.`, ifAny: true }),
		change: textColumn({
			label: say`Change`,
			help: say`What would be different. Of other hours for a round the best is shown; with more than ${MOST_ROUNDS_MOVED.rounds} rounds a day, or more than ${MOST_ROUNDS_MOVED.timesKinds} rounds times kinds, only the two around the longest gap are tried at other hours, and with more than ${MOST_ROUNDS_MOVED.timesKindsOfTwo} rounds times kinds none. Where there is no kit, or a kit is missing less than ${LEAST_UNMET} of 1\u202f000 times, other hours are not tried.`,
		}),
		kits: computed({
			label: say`Kits in service`,
			unit: say`kits`,
			value: wholeAmount(),
			decimals: 0,
			help: say`With the change.`,
		}),
		turnaround_minutes: computed({
			label: say`Until kits are ready`,
			unit: "min",
			value: amount(),
			decimals: 0,
			help: say`From the start of a round.`,
		}),
		unmet_per_1000_uses: computed({
			label: say`Times no kit is ready when needed`,
			unit: say`per 1\u202f000 uses`,
			value: amount(),
			decimals: 3,
			help: say`With the kits in service.`,
		}),
		avoided_per_1000_uses: computed({
			label: say`Avoided`,
			unit: say`per 1\u202f000 uses`,
			value: amount(),
			decimals: 3,
			help: say`Fewer than now; blank where it would be worse.`,
		}),
		kits_needed: computed({
			label: say`Kits needed`,
			unit: say`kits`,
			value: wholeAmount(),
			decimals: 0,
			help: say`With the change.`,
		}),
	},
});
