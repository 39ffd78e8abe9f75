import { say } from "../../../core/say.ts";
import { reprocessesAfterEachUse } from "../../state/reprocessesAfterEachUse.ts";
import type { State } from "../../state/store.ts";

/** Why nothing is to be done in the hours that are shown. */
export function nothingWords(state: State): string {
	return reprocessesAfterEachUse(state)
		? say`This unit reprocesses each kit as soon as it has been used, so no clock times are set.`
		: say`Nothing is planned for these hours.`;
}
