import { pages } from "../../src/ui/pages.ts";

/** What is made for paper, by the page that has it. */
export const printOuts = new Map(
	await Promise.all(
		pages.map(async ({ file, load }) => {
			const on = await load();
			return [file, "mount" in on ? [] : (on.prints ?? [])] as const;
		}),
	),
);
