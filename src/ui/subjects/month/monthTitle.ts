import { say } from "../../../core/say.ts";
import type { PageTitle } from "../../page.ts";

/** What was planned and what was done. */
export const monthTitle: PageTitle = {
	file: "month",
	title: say`The month: planned and done`,
	about: say`What was planned for the days of a month, a week or any other span, and what the record says was done: for the supervisor, and to see whether the plans are any good. What nobody wrote down is not recorded, and never 0.`,
};
