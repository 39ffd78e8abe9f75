import type { Save } from "../../../core/merge/descent.ts";
import { say } from "../../../core/say.ts";
import { shownDayAndYear } from "../../format/shownDay.ts";

/** When and by whom a copy was saved. @example "Mon 1 Mar 2027, 10:20 (Amina)"; "" where nobody knows */
export function saveWords({ at, by }: Pick<Save, "at" | "by">): string {
	const [day = "", time = ""] = at.split("T");
	const when = day === "" ? "" : `${shownDayAndYear(day)}, ${time}`;
	if (by === "" || when === "") return when + by;
	return say`${when} (${by})`;
}
