import { note } from "./note.ts";
import { textSchema, type ValueKind } from "./valueKind.ts";

/** The mark of something that is listed elsewhere, or blank; spaces around it do not count. */
export function mark(): ValueKind<string> {
	const kind = note();
	return {
		...kind,
		schema: textSchema(kind.allowed, (text) => kind.schema.safeParse(text).data?.trim()),
	};
}
