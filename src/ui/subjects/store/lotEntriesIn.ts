import type { EntriesIn } from "../../../core/edit/store/entered.ts";
import { countsByNow } from "../../../core/plan/countsByNow.ts";
import { storeEntries } from "../../../core/plan/store/storeEntries.ts";
import { readToday } from "../../../core/plan/today/readToday.ts";
import type { State } from "../../state/store.ts";

/** What happened to the lots of a workbook, as the stock's page counts it: by the journal, and by rounds where they draw from a lot. */
export function lotEntriesIn({ today }: State): EntriesIn {
	return (workbook) => {
		const read = readToday(workbook, today);
		return storeEntries(read).filter(({ entry }) => countsByNow(read, entry.day));
	};
}
