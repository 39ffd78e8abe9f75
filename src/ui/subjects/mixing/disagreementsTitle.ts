import { say } from "../../../core/say.ts";
import type { PageTitle } from "../../page.ts";

/** What guidelines say differently, and what this unit does. */
export const disagreementsTitle: PageTitle = {
	file: "disagreements",
	title: say`Where guidelines disagree`,
};
