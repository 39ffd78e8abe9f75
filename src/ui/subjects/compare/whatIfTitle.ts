import { say } from "../../../core/say.ts";
import type { PageTitle } from "../../page.ts";

/** Two ways of working side by side. */
export const whatIfTitle: PageTitle = {
	file: "what-if",
	title: say`What if?`,
	about: say`Keep a copy of the settings and rounds under a name, change some of them, and see side by side what follows from each. Copies live in the workbook and are saved with it.`,
};
