import { say } from "../../../core/say.ts";
import type { PageTitle } from "../../page.ts";

/** The first page of a workbook that has been begun. */
export const todayTitle: PageTitle = {
	file: "today",
	title: say`Today`,
	about: say`What to do by the clock, which kits are ready, and where to write down what was done.`,
};
