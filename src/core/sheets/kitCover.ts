import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { choice, yesNo } from "../values/choice.ts";
import { optional } from "../values/valueKind.ts";
import { amount, wholeAmount, words } from "./computedValues.ts";

export const kitCoverSheet = sheet({
	file: "kit-cover.csv",
	title: "How many kits are enough",
	about: "For each number of kits, how many of 1,000 needs find none ready.",
	columns: {
		kits: computed({
			label: "Kits",
			unit: "kits",
			value: wholeAmount(),
			decimals: 0,
			help: "Number of kits in service.",
		}),
		unmet_per_1000_uses: computed({
			label: "Needs that find none ready",
			unit: "per 1,000 uses",
			value: amount(),
			decimals: 3,
			help: "Smaller is safer.",
		}),
		enough: computed({
			label: "Enough",
			unit: "",
			value: yesNo(),
			help: "yes from the number of kits needed on.",
		}),
		deciding: computed({
			label: "Decided by",
			unit: "",
			value: optional(choice(["risk", "beds"])),
			help: "At the number needed: the chance that none is ready, or the delivery beds and spare kits.",
		}),
		kind: computed({
			label: "Kind",
			unit: "",
			value: words(),
			help: "Blank where all kits are alike.",
			added: true,
		}),
	},
});
