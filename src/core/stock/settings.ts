import { typed } from "../column.ts";
import { say } from "../say.ts";
import { commonPractice } from "../source.ts";
import { choice } from "../values/choice.ts";
import { note } from "../values/note.ts";
import { number } from "../values/number.ts";
import { optional } from "../values/valueKind.ts";

export const stockSettings = {
	review_days: typed({
		label: say`Days between orders`,
		unit: say`days`,
		value: number({ min: 1, max: 366, whole: true }),
		fallback: 7,
		help: say`How often stock is counted and ordered.`,
		source: commonPractice,
	}),
	stock_horizon_days: typed({
		label: say`How far ahead stock is looked at`,
		unit: say`days`,
		value: number({ min: 7, max: 366, whole: true }),
		fallback: 182,
		help: say`For the day each item runs out; up to a year.`,
		source: commonPractice,
		added: true,
	}),
	count_every_days: typed({
		label: say`Days between counts`,
		unit: say`days`,
		value: number({ min: 1, max: 366, whole: true }),
		fallback: 31,
		help: say`Stock that was last counted longer ago is said to be so wherever the plan relies on it.`,
		source: commonPractice,
		added: true,
	}),
	product_drawn_by: typed({
		label: say`Chlorine product leaves the store by`,
		unit: "",
		value: choice(["journal", "rounds"]),
		fallback: "journal",
		help: say`journal: what is issued is written there. rounds: each round that is written down draws its product from its lot, and an issue of the product on the same day is not counted a second time.`,
		source: commonPractice,
		added: true,
	}),
	order_money: typed({
		label: say`Money for this order`,
		unit: say`currency`,
		value: optional(number({ min: 0, max: 1_000_000_000, as: "money" })),
		fallback: null,
		decimals: 2,
		help: say`Where it does not pay for the whole order, what to take first is said, and what then runs out. Blank: the whole order can be paid for.`,
		source: commonPractice,
		added: true,
	}),
	currency: typed({
		label: say`Currency`,
		unit: "",
		value: note(),
		fallback: "",
		help: say`Shown beside prices.`,
	}),
};
