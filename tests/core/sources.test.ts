import { expect, test } from "vitest";
import type { Source } from "../../src/core/source.ts";
import { sources } from "../../src/core/sources.ts";
import { fuelData } from "../../src/core/water/fuelData.ts";

/**
 * What the reference notes have of each subject, where sources differ: section of
 * `chlorine.md` (C), `reprocessing.md` (R) or `demand.md` (D), then the words of the source.
 */
type Row = readonly [name: keyof typeof sources, section: string, words: readonly RegExp[]];
const rows: readonly Row[] = [
	["soakStrength", "C 6", [/about 0\.1 %/, /0\.05 % \(WHO 2014\)/, /0\.04 to 0\.045 %/]],
	["soakStrength", "C CL79", [/0\.5 % .* containers only; for the pieces .* from memory/]],
	["soakMinutes", "C 6", [/10 minutes is decontamination/, /30 minutes at 0\.05 %/]],
	["soakMinutes", "C 6", [/3 minutes at about 0\.1 %/, /10 minutes at 20 °C/]],
	["cooling", "R 2.5", [/0\.57 .*open/, /0\.21 .*kettle/, /0\.18 .*10 W/, /\(derived\)/]],
	["settling", "R 1.4", [/30 minutes/, /a few minutes, .*\(seen\)/]],
	["stoves", "R 2.4", [/0\.09 \(0\.12\), wood improved 0\.18 \(0\.3\)/, /0\.25 \(0\.3\)/]],
	["stoves", "R 2.4", [/kerosene 0\.45 \(0\.35\) and gas 0\.35 \(0\.5\), .*swapped/]],
	["stoves", "R 2.4", [/induction 0\.73 \(electric plate 0\.85\)/, /charcoal 31 MJ \(30\)/]],
	["powderLoss", "C 5.2", [/about 2 % .* a year/, /3 to 5 % a year.*\(from memory\)/]],
	["fading", "C 5.2, R 4", [/3 months of making/, /6 months at 2\.6 %/, /1 to 2 at 9\.6 %/]],
	["fading", "C 5.2", [/2\.5 to 3 at 9\.6 %/, /6 months to a year for household bleach/]],
	["descaling", "R 3", [/30 to 60 minutes/, /1 part .* to 2 of water/, /1 to 1/, /2 to 1/]],
	["chlorometric", "C 4", [/9\.6 % for 36° \(114 g\/L\)/, /12\.5 % for 48° \(152 g\/L\)/]],
	["periodicReview", "D 4", [/at least half a review period/, /at least one and usually more/]],
	["boilHold", "R 2.1", [/Philippines, .*2 minutes \(seen\)/, /20 minutes .*\(from memory\)/]],
	["vinegarStrength", "R 3", [/at least 4 g/, /5 % is usual is from a shop's label/]],
];
test.each(rows)("%s says what the notes have: %s", (name, _section, words) => {
	const { title, place, disagreement }: Source = sources[name];
	const said = [title, place, disagreement].filter(Boolean).join("\n");
	for (const figure of words) expect(said).toMatch(figure);
});

test("no time or mixture of vinegar is taken for published", () => {
	expect(sources.descaling.mark).toBe("estimate");
});

test("behind the other data on stoves stand the plan's own figures", () => {
	const { wood_three_stone, wood_improved, charcoal_improved, electric, kerosene, lpg } = fuelData;
	const behind = sources.stoves.disagreement.matchAll(/\((?:electric plate )?([\d.]+)\)/g);
	expect(Array.from(behind, ([, figure]) => Number(figure))).toEqual([
		wood_three_stone.efficiency,
		wood_improved.efficiency,
		charcoal_improved.efficiency,
		electric.efficiency,
		kerosene.efficiency,
		lpg.efficiency,
		charcoal_improved.mjPerKg,
		kerosene.mjPerKg,
		lpg.mjPerKg,
	]);
});
