import { say } from "../../../core/say.ts";
import type { PageTitle } from "../../page.ts";

/** The weekly routine. */
export const mondayTitle: PageTitle = {
	file: "monday",
	title: say`Monday`,
	about: say`The weekly routine in its order. What is done stays ticked until the next week, and every entry stands on its ordinary sheet.`,
};
