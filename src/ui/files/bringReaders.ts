import { say } from "../../core/say.ts";
import { later } from "../dom/later.ts";
import type * as Readers from "../readers.ts";
import { ask } from "../shell/ask.ts";

export const readers = later(() => import("../readers.ts"));

/** What reads files, once it is there. @returns undefined where it did not come, when the person has been told */
export async function bringReaders(): Promise<typeof Readers | undefined> {
	try {
		return await readers.bring();
	} catch {
		await ask({
			title: say`Nothing was opened`,
			text: [
				say`The part of the program that reads files could not be fetched. The workbook stands as it was. Try again with a connection to where this page came from.`,
			],
			answers: [["close", say`Close`]],
		});
		return undefined;
	}
}
