import type { LocalTime } from "../../../core/values/dateTime.ts";
import { dateTime } from "../../../core/values/dateTime.ts";
import type { EntryField } from "../store/entryField.ts";
import { momentText } from "./benchFields.ts";

/** The moment in a field whose text was just written down, so it can be read. */
export function writtenAt(field: EntryField): LocalTime {
	return dateTime().schema.parse(momentText(field));
}
