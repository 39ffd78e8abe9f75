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
	currency: typed({
		label: "Currency",
		unit: "",
		value: note(),
		fallback: "",
		help: "Shown beside prices.",
	}),
};
