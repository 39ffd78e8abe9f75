import { typed } from "../column.ts";
import { say } from "../say.ts";
import { note } from "../values/note.ts";

export const recordSettings = {
	when_none_ready: typed({
		label: say`When no kit is ready`,
		unit: "",
		value: note(),
		fallback: "",
		help: say`Whom to call and where to borrow, in a line or two. It stands on the page of today and on the printed plan; no name of a mother or a baby.`,
		added: true,
	}),
	monday_done: typed({
		label: say`Done of the weekly routine`,
		unit: "",
		value: note(),
		fallback: "",
		help: say`Kept by the page Monday: the first day of the week it prepares, and the steps that are ticked.`,
		added: true,
	}),
};
