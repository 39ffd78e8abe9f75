import { expect, test } from "vitest";
import { Store } from "../../../../src/ui/state/store.ts";
import { stockHeadline } from "../../../../src/ui/subjects/store/stockPage.ts";
import { smallUnit } from "../../../core/smallUnit.ts";

const headline = (journal: string) =>
	stockHeadline(
		new Store(smallUnit({ "journal.csv": `day,item,lot,entry,quantity,note${journal}` })).state,
	);

// The small unit's lot L2 arrives on 20 March.
test("a lot on the way is not one to count again", () => {
	expect(headline("")).toMatch(/^4 lots in the books; 1 of them on the way; /);
	expect(headline("")).not.toContain("to count again");
	expect(headline("\n2027-02-10,liquid,L1,issue,11,")).toContain("1 lot to count again");
});
