import { arrangedGrid } from "./arrangedGrid.ts";
import { arrangedRows } from "./arrangedRows.ts";
import { type Arrangement, arrangementWords, asInFile, isAsInFile } from "./arrangement.ts";
import type { GridModel } from "./gridModel.ts";

/** A sheet as a person looks at it, and the way back from a row that is seen to the sheet's own row. */
export class ShownSheet {
	#sheet: GridModel | undefined;
	#model: GridModel | undefined;
	#arrangement = asInFile;
	/** Rows of the sheet in the order shown; absent where all stand as in the file. */
	#rows: readonly number[] | undefined;

	get arrangement(): Arrangement {
		return this.#arrangement;
	}

	/** The whole sheet, in the order of the file. */
	get sheet(): GridModel | undefined {
		return this.#sheet;
	}

	/** What is seen of it. */
	get model(): GridModel | undefined {
		return this.#model;
	}

	/** What is shown, in words; "" where it is everything in the order of the file. */
	get words(): string {
		const { arrangement } = this;
		return this.#sheet && this.#rows
			? arrangementWords(this.#sheet, arrangement, this.#rows.length)
			: "";
	}

	/**
	 * The sheet after a change. Where the person edited what is seen, its rows are
	 * `held` in their places and new ones stand last, so that no row runs away under
	 * the hand; otherwise they are arranged anew.
	 */
	take(next: GridModel | undefined, held: boolean): void {
		const came = (next?.rowCount ?? 0) - (this.#sheet?.rowCount ?? 0);
		const last = this.#sheet?.rowCount ?? 0;
		this.#sheet = next;
		if (held && this.#rows && came >= 0)
			this.#rows = [...this.#rows, ...Array.from({ length: came }, (_, at) => last + at)];
		else this.#arrangeAnew();
		this.#layOut();
	}

	arrange(arrangement: Arrangement): void {
		this.#arrangement = arrangement;
		this.#arrangeAnew();
		this.#layOut();
	}

	/** The sheet's own row of a row that is seen; rows past the last are new rows of the sheet. */
	rowOf(seen: number): number {
		if (!this.#rows || !this.#sheet) return seen;
		return this.#rows[seen] ?? this.#sheet.rowCount + seen - this.#rows.length;
	}

	/** Where a row of the sheet is seen; undefined where the filter hides it. */
	seenAt(row: number): number | undefined {
		if (!this.#rows) return row;
		const at = this.#rows.indexOf(row);
		return at < 0 ? undefined : at;
	}

	#arrangeAnew(): void {
		this.#rows =
			this.#sheet && !isAsInFile(this.#arrangement)
				? arrangedRows(this.#sheet, this.#arrangement)
				: undefined;
	}

	#layOut(): void {
		this.#model =
			this.#sheet && this.#rows ? arrangedGrid(this.#sheet, this.#rows, this.words) : this.#sheet;
	}
}
