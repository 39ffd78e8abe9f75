import { say } from "../../../core/say.ts";
import type { PageTitle } from "../../page.ts";

/** The one page that is the plan itself. */
export const planTitle: PageTitle = {
	file: "this-week",
	title: say`The plan`,
};
