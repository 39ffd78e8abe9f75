import { say } from "../../../core/say.ts";
import type { PageTitle } from "../../page.ts";

/** What to do when chlorine or vinegar hurts somebody, and when it is spilt. */
export const firstAidTitle: PageTitle = {
	file: "first-aid",
	title: say`First aid and spills`,
};
