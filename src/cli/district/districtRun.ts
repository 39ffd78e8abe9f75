import type { Problem } from "../../core/problem.ts";
import { unitsMonthSheet } from "../../core/sheets/unitsMonth.ts";
import { unitsOrderSheet } from "../../core/sheets/unitsOrder.ts";
import { unitsProblemsSheet } from "../../core/sheets/unitsProblems.ts";
import { DistrictOrder } from "../../core/units/districtOrder.ts";
import type { ItemNames } from "../../core/units/itemNames.ts";
import { MonthSums } from "../../core/units/monthSums.ts";
import type { InStore } from "../../core/units/storeStock.ts";
import { firstDaysDiffer, namedTwice } from "../../core/units/unitsProblems.ts";
import type { IsoDate } from "../../core/values/date.ts";
import { computedLines } from "../../io/computedCsv.ts";
import { problemLines } from "../../io/district/problemLines.ts";
import type { UnitDone } from "./unitDone.ts";
import type { WholeFiles } from "./wholeFiles.ts";

/** What a district's units come to, added up while their lines are written. */
export class DistrictRun {
	readonly #files: WholeFiles;
	readonly #order: DistrictOrder;
	readonly #months = new MonthSums();
	/** Of all that was read only the names are held, so that no unit counts twice unseen. */
	readonly #names = new Set<string>();
	#firstDays: readonly [first: IsoDate, last: IsoDate] | undefined;
	units = 0;
	unread = 0;
	/** Read, but some number of their plan has no answer. */
	unplanned = 0;

	constructor(files: WholeFiles, nameOf: ItemNames) {
		this.#files = files;
		this.#order = new DistrictOrder(nameOf);
	}

	async add(unit: UnitDone): Promise<void> {
		this.units++;
		for (const [file, lines] of Object.entries(unit.lines)) await this.#files.write(file, lines);
		if (unit.state === "not_read") {
			this.unread++;
			return;
		}
		if (unit.state === "not_planned") this.unplanned++;
		this.#order.add(unit.orders);
		this.#months.add(unit.months);
		if (this.#names.has(unit.name)) await this.tell([namedTwice(unit.name, unit.path)], unit);
		this.#names.add(unit.name);
		if (unit.firstDay) this.#sawFirstDay(unit.firstDay);
	}

	/** Writes what all units come to. @param store of the district, by its names of items */
	async end(store: readonly InStore[]): Promise<void> {
		const { table, problems } = this.#order.table(store);
		await this.#files.write(unitsOrderSheet.file, computedLines(table));
		await this.#files.write(unitsMonthSheet.file, computedLines(this.#months.table()));
		const [first, last] = this.#firstDays ?? [];
		const differ = first !== undefined && last !== undefined && first !== last;
		await this.tell([...problems, ...(differ ? [firstDaysDiffer(first, last)] : [])]);
	}

	/** Writes problems of no unit's own workbook. */
	async tell(problems: readonly Problem[], of = { name: "", path: "" }): Promise<void> {
		const whose = { unit: of.name, path: of.path };
		await this.#files.write(unitsProblemsSheet.file, problemLines(whose, problems));
	}

	#sawFirstDay(day: IsoDate): void {
		const [first, last] = this.#firstDays ?? [day, day];
		this.#firstDays = [day < first ? day : first, day > last ? day : last];
	}
}
