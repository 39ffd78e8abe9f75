import { typed } from "../column.ts";
import { commonPractice } from "../sources.ts";
import { number } from "../values/number.ts";
import { note } from "../values/text.ts";

export const stockSettings = {
	review_days: typed({
		label: "Days between orders",
		unit: "days",
		value: number({ min: 1, max: 366, whole: true }),
		fallback: 7,
		help: "How often stock is counted and ordered.",
		source: commonPractice,
	}),
	stock_horizon_days: typed({
		label: "How far ahead stock is looked at",
		unit: "days",
		value: number({ min: 7, max: 366, whole: true }),
		fallback: 182,
		help: "For the day each item runs out; up to a year.",
		source: commonPractice,
		added: true,
	}),
	currency: typed({
		label: "Currency",
		unit: "",
		value: note(),
		fallback: "",
		help: "Shown beside prices.",
	}),
};
