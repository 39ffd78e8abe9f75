import type { StoreEntry } from "../../../src/core/edit/store/storeEntry.ts";

/** Two lots of one item among others: one that came, one on its way. */
export const LOTS = `item,lot,quantity,made_on,received_on,arrives_on,expires_on
	gauze squares,G1,140,,2027-02-01,,2030-01-31
	liquid,L1,10,2027-01-10,2027-01-20,,2027-07-10
	liquid,L2,10,2027-02-10,,2027-03-20,2027-08-10
	vinegar,V1,3,,2027-02-01,,2027-02-20`;

/** What stands in the storekeeper's fields before anything is typed. */
export const blank: StoreEntry = {
	kind: "count",
	item: "gauze squares",
	lot: "G1",
	isNew: false,
	day: "2027-03-02",
	quantity: "",
	note: "",
	expires: "",
	made: "",
};
