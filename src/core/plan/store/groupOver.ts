import { derive, type Figure, refusedFigure } from "../../calculation.ts";
import { memoizeByObject } from "../../memoize.ts";
import { advice } from "../../problem.ts";
import type { RoundsOfDay } from "../../rounds/roundsOfDay.ts";
import { say } from "../../say.ts";
import type { ItemGroup, ItemsRow } from "../../sheets/items.ts";
import { usageSheet } from "../../sheets/usage.ts";
import type { Rates } from "../../stock/ratesOfItem.ts";
import { isCounted, wholePiecesOfGroup } from "../../stock/wholePieces.ts";
import type { Pair } from "../countFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { noUsageLine, ratesOfUsage, usageLabel, usageLines, usageUnit } from "./ratesOfUsage.ts";
import { useOf, useOver } from "./useOfItem.ts";

/** Use of all items of a group together; in whole pieces where all of them are counted so. */
export function groupOver(unit: UnitFigures, group: ItemGroup, days: Figure<RoundsOfDay[]>): Pair {
	const { rates, inParts } = groupsOf(unit)[group];
	const { expected, setAside } = useOver(
		useOf(unit, rates, days),
		unit.read.settings.plan_confidence,
	);
	return { expected, setAside: inParts ? derive(wholePiecesOfGroup, { use: setAside }) : setAside };
}

/** Without a line for it nothing is known of its use: a dash, never 0. The rest of the plan does not wait for it. */
const notKnown = refusedFigure(
	usageLabel,
	usageUnit,
	noUsageLine,
	advice(noUsageLine, {
		code: "use-not-known",
		received: say`no line`,
		allowed: say`a line for each kind of gauze`,
		message: say`No line of “${usageSheet.title}” says how much gauze goes each time, so none is planned.`,
	}),
);

interface Group {
	readonly rates: Figure<Rates>;
	/** Whether parts of pieces go of what is counted in pieces. */
	readonly inParts: boolean;
}

/** The same on every day. */
const groupsOf = memoizeByObject((unit: UnitFigures): Record<ItemGroup, Group> => {
	const { rows } = unit.read.tables.items;
	const use = (group: ItemGroup): Group => {
		const items = rows.filter(({ value }) => value.group === group);
		const names = new Set(items.map(({ value }) => value.item));
		const lines = unit.read.tables.usage.rows.filter(({ value }) => names.has(value.item));
		const isOfGroup = (value: Partial<ItemsRow>) =>
			value.group === undefined || value.group === group;
		const usage = usageLines(unit, (name) => names.has(name), lines, isOfGroup);
		const isKnown = !usage.outcome.ok || usage.outcome.value.length > 0;
		return {
			rates: ratesOfUsage(unit, isKnown ? usage : notKnown),
			inParts:
				items.every(({ value }) => isCounted(value.measure)) &&
				lines.some(({ value }) => !Number.isInteger(value.quantity)),
		};
	};
	return { gauze: use("gauze"), gloves: use("gloves"), other: use("other") };
});
