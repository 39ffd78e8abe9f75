import { say } from "../../../core/say.ts";
import type { PageTitle } from "../../page.ts";

/** One kit and every check it went through. */
export const kitHistoryTitle: PageTitle = {
	file: "kit-history",
	title: say`History of a kit`,
	about: say`One kit: its state, until when it may be used, and every check it went through with what the check found. Blank check sheets to hang by the bench are printed from here; what is written on them is typed in under Readiness checks.`,
};
