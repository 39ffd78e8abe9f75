import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { yesNo } from "../values/choice.ts";
import { optional } from "../values/valueKind.ts";
import { wholeAmount } from "./computedValues.ts";
import { textColumn } from "./textColumn.ts";

export const kitRegisterSheet = sheet({
	file: "kit-register.csv",
	title: say`State of each kit`,
	about: say`On the first day of the plan, by what was written down of its uses, rounds and checks. A kit that is incomplete or in repair is not counted until a later round and the check after it.`,
	columns: {
		kit: textColumn({ label: say`Kit`, help: say`The mark on the kit.` }),
		kind: textColumn({ label: say`Kind`, help: say`Kind of kit.` }),
		state: textColumn({
			label: say`State`,
			coded: true,
			help: say`ready, to reprocess, incomplete, in repair or out of service.`,
		}),
		counts: computed({
			label: say`In service`,
			unit: "",
			value: yesNo(),
			help: say`Whether the plan counts on it.`,
		}),
		use_next: computed({
			label: say`Use next`,
			unit: say`place`,
			value: wholeAmount(),
			decimals: 0,
			help: say`1 is the ready kit to take first: the one disinfected longest ago.`,
		}),
		ready_since: textColumn({ label: say`Ready since`, help: say`Day of its last disinfection.` }),
		ready_until: textColumn({
			label: say`Ready until`,
			help: say`Last day it may be used without a new round.`,
		}),
		last_checked: textColumn({ label: say`Last check`, help: say`Latest finished check.` }),
		missing: computed({
			label: say`Pieces missing`,
			unit: say`pieces`,
			value: wholeAmount(),
			decimals: 0,
			help: say`To find or to order.`,
		}),
		reason: textColumn({ label: say`Why`, help: say`What the check found.` }),
		recorded: computed({
			label: say`Recorded`,
			unit: "",
			value: optional(yesNo()),
			help: say`Whether uses or rounds were written down in the last days that a kit keeps; if not, nobody knows what happened since.`,
			added: true,
		}),
	},
});
