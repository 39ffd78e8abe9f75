import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { yesNo } from "../values/choice.ts";
import { wholeAmount, words } from "./computedValues.ts";

export const kitRegisterSheet = sheet({
	file: "kit-register.csv",
	title: "How each kit stands",
	about:
		"On the first day of the plan, by the latest finished check. A failed or overdue kit is not counted until a later check passes.",
	columns: {
		kit: computed({ label: "Kit", unit: "", value: words(), help: "The mark on the kit." }),
		kind: computed({ label: "Kind", unit: "", value: words(), help: "Kind of kit." }),
		state: computed({
			label: "State",
			unit: "",
			value: words(),
			help: "ready, to reprocess, overdue, repair, incomplete or out of service.",
		}),
		counts: computed({
			label: "In service",
			unit: "",
			value: yesNo(),
			help: "Whether the plan counts on it.",
		}),
		use_next: computed({
			label: "Use next",
			unit: "place",
			value: wholeAmount(),
			decimals: 0,
			help: "1 is the ready kit to take first: the one disinfected longest ago.",
		}),
		ready_since: computed({
			label: "Ready since",
			unit: "",
			value: words(),
			help: "Day of its last disinfection.",
		}),
		ready_until: computed({
			label: "Ready until",
			unit: "",
			value: words(),
			help: "Last day it may be used without a new round.",
		}),
		last_checked: computed({
			label: "Last check",
			unit: "",
			value: words(),
			help: "Latest finished check.",
		}),
		missing: computed({
			label: "Pieces missing",
			unit: "pieces",
			value: wholeAmount(),
			decimals: 0,
			help: "To find or to order.",
		}),
		reason: computed({ label: "Why", unit: "", value: words(), help: "What the check found." }),
	},
});
