import { say } from "../../../core/say.ts";
import type { PageTitle } from "../../page.ts";

/** Two ways of working side by side. */
export const whatIfTitle: PageTitle = {
	file: "what-if",
	title: say`What if?`,
	about: say`Change something in the copy, and see side by side what follows. The workbook, its draft and its files stay as they are until you use the copy.`,
};
