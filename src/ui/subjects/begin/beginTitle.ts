import { say } from "../../../core/say.ts";
import type { PageTitle } from "../../page.ts";

/** The page on which an empty workbook is begun. */
export const beginTitle: PageTitle = {
	file: "begin",
	title: say`Begin here`,
	about: say`Ten entries make a first plan. Each is written into its ordinary sheet, where it can be seen and changed; Enter goes on to the next, Undo takes one back.`,
};
