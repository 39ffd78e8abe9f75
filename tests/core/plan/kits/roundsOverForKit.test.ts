import { expect, test } from "vitest";
import { roundsOverForKit } from "../../../../src/core/plan/kits/roundsOverForKit.ts";
import { at, check, used } from "../../record/kitEvents.ts";

const DAY = "2027-02-26";
const span = (from: number, until: number, day = DAY) => ({
	from: at(DAY, from),
	until: at(day, until),
});
const tested = (minutes: number, day = DAY) => check(day, "passed", "after_round", minutes);
type Asked = Parameters<typeof roundsOverForKit>;
/** Of a round from 07:00 to 08:35. */
const over = (checks: Asked[1], uses: Asked[2] = [], others: Asked[0] = []) =>
	roundsOverForKit([span(420, 515), ...others], checks, uses)[0];

// record.md: the check after a round makes its kit ready; at equal times the unsafe one wins.
test.each([
	["without a check it is over with its end", [], [], 515],
	["tested during the round it is over with the check", [tested(500)], [], 500],
	["the first check of several is its own", [tested(505), tested(490)], [], 490],
	[
		"a test that failed is a check too",
		[tested(505), check(DAY, "in_repair", "after_round", 490)],
		[],
		490,
	],
	["a check at its start is of the round before", [tested(420)], [], 515],
	["a check before it says nothing", [tested(400)], [], 515],
	["a check at its end stands behind it anyway", [tested(515)], [], 515],
	["a check before use is none of a round", [check(DAY, "passed", "before_use", 500)], [], 515],
	["used before its check, during the round", [tested(500)], [used(DAY, 450)], 515],
	["used at the minute of its check", [tested(500)], [used(DAY, 500)], 515],
	["used after its check", [tested(500)], [used(DAY, 505)], 500],
	["used before the round", [tested(500)], [used(DAY, 420)], 500],
])("%s", (_, checks, uses, minutes) => {
	expect(over(checks, uses)).toEqual(at(DAY, minutes));
});

test("a kit in two rounds at once: no check during both says which of them it is of", () => {
	expect(over([tested(500)], [], [span(490, 600)])).toEqual(at(DAY, 515));
	expect(over([tested(480)], [], [span(490, 600)])).toEqual(at(DAY, 480));
});

test("over midnight", () => {
	const round = span(1380, 40, "2027-02-27");
	expect(roundsOverForKit([round], [tested(10, "2027-02-27")], [])).toEqual([at("2027-02-27", 10)]);
});

test("sent away until after its end, no check is during it; each of several rounds has its own", () => {
	const away = { from: at(DAY, 900), until: at(DAY, 900) };
	expect(roundsOverForKit([away, span(420, 515)], [tested(500), tested(900)], [])).toEqual([
		at(DAY, 900),
		at(DAY, 500),
	]);
});

test("a round that is over has no more to do with the check of the next", () => {
	const rounds = [span(420, 515), span(840, 935)];
	expect(roundsOverForKit(rounds, [tested(920)], [])).toEqual([at(DAY, 515), at(DAY, 920)]);
});

test("a check after one of two rounds has ended, during the other, is of the other", () => {
	const rounds = [span(420, 515), span(490, 600)];
	expect(roundsOverForKit(rounds, [tested(550)], [])).toEqual([at(DAY, 515), at(DAY, 550)]);
});

test.each([
	["that ended", span(420, 515)],
	["that was over as it began", span(900, 900)],
	["whose end was written before its start", span(700, 640)],
])("a later check moves no round %s", (_, round) => {
	expect(roundsOverForKit([round], [tested(1000)], [])).toEqual([round.until]);
});

test("nor does a round that was over as it began take the check from another", () => {
	const rounds = [span(420, 515), span(450, 450)];
	expect(roundsOverForKit(rounds, [tested(500)], [])).toEqual([at(DAY, 500), at(DAY, 450)]);
});
