import { say } from "../../../core/say.ts";
import type { PageTitle } from "../../page.ts";

/** The words of the program: one word for one thing, what it means, and the other languages' words. */
export const wordsTitle: PageTitle = {
	file: "words",
	title: say`Words used here`,
};
