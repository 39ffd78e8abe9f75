import type { Chance } from "../fuzz/chance.ts";
import { TROUBLE } from "../fuzz/textBytes.ts";

const RIGHT = [
	"6",
	"0",
	"12",
	"6,5",
	"0.5",
	"1",
	"24",
	"07:30",
	"14:00",
	"2027-03-02",
	"2027-03-05",
	"yes",
	"no",
	"bag set",
	"in_service",
	"gauze",
	"K1",
	"03:10 14:25",
	"Liquid bleach 3.5 %",
	"ordered; comes on Friday",
];
const WRONG = [
	...TROUBLE.filter((text) => !/[\0\t\n\r]/.test(text)),
	"many",
	"half past",
	"-5",
	"31.02.2027",
];
/** What a person may type anywhere, right or wrong. */
export const textFor = (chance: Chance) =>
	chance.once(8) ? "" : chance.pick(chance.once(3) ? WRONG : RIGHT);
