import { say } from "../../../core/say.ts";
import type { PageTitle } from "../../page.ts";

/** Two copies of one workbook as one. */
export const twoCopiesTitle: PageTitle = {
	file: "two-copies",
	title: say`Bring two copies together`,
	about: say`The workbook travels, and two people write into two copies of it. Here they become one again: every line of both is kept, a change that one of them made is taken, and where both changed the same cell you choose.`,
};
