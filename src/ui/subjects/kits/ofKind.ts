import { say } from "../../../core/say.ts";

/** Words about a kind of kit; the kind is named where there are several. */
export function ofKind(kind: string, words: string): string {
	return kind === "" ? words : say`${kind}: ${words}`;
}
